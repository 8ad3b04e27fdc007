package provender.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** A busy display made up for measuring: 60 fish, and so many days of feedings. */
final class BusyTank {
  static final LocalDate LAST = LocalDate.of(2026, 11, 25);
  private static final String[] SPECIES = {"Zebrasoma flavescens", "Pomacanthus imperator", "Pterois volitans",
      "Diodon holocanthus", "Pseudanthias squamipinnis", "Zebrasoma scopas"};
  private static final String[] FOODS = {"nori_dried", "mysis_frozen", "krill_frozen", "sponge_prepared_frozen",
      "clam_half_shell", "pellet_small_soft"};

  private BusyTank() {}

  static List<Map<String, Object>> entries(int days, int feedingsPerDay) {
    return entries(days, feedingsPerDay, LAST);
  }

  /** Entries as JSON would give them: the roster, then feedings oldest first, up to a last day. */
  static List<Map<String, Object>> entries(int days, int feedingsPerDay, LocalDate last) {
    List<Map<String, Object>> entries = new ArrayList<>();
    String begun = last.minusDays(days) + "T07:00:00+01:00";
    entries.add(entry(entries.size(), "record", begun,
        Map.of("record", "tank", "key", "tank", "set", Map.of("name", "Busy", "temperatureC", 26.0, "usualFoods", List.of(FOODS)))));
    for (int fish = 0; fish < 60; fish++) {
      entries.add(entry(entries.size(), "record", begun, Map.of("record", "fish", "key", "fish-" + fish, "set",
          Map.of("name", "Fish " + fish, "species", SPECIES[fish % SPECIES.length], "weightGrams", 40.0 + 10 * fish))));
    }
    for (int day = days - 1; day >= 0; day--) {
      for (int meal = 0; meal < feedingsPerDay; meal++) {
        int minute = 480 + meal * 720 / feedingsPerDay;
        String at = last.minusDays(day) + "T" + two(minute / 60) + ":" + two(minute % 60) + ":00+01:00";
        entries.add(entry(entries.size(), "feeding", at, Map.of("items", List.of(
            Map.of("food", FOODS[(day + meal) % FOODS.length], "grams", 8.0 + meal),
            Map.of("food", FOODS[(day + meal + 1) % FOODS.length], "grams", 3.0)))));
      }
    }
    return entries;
  }

  private static Map<String, Object> entry(int number, String kind, String at, Map<String, Object> body) {
    return Map.of("id", new UUID(1, number).toString(), "tank", "tank", "device", "bench", "deviceSeq", number + 1, "kind", kind,
        "v", 1, "seq", number + 1, "happenedAt", at, "by", "bench", "body", body);
  }

  private static String two(int number) {
    return number < 10 ? "0" + number : String.valueOf(number);
  }
}
