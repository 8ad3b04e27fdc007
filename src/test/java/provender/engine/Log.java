package provender.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import provender.contract.TankBook;
import provender.engine.node.MapNode;
import provender.engine.node.Node;
import provender.engine.reference.Reference;
import provender.reference.ReferenceFiles;

/** A tank's log written line by line, the way keepers do, on days counted from 2026-06-01. */
public final class Log {
  public static final Reference REFERENCE = Reference.of(new MapNode(ReferenceFiles.onClasspath().read()));
  private static final java.time.LocalDate FIRST = java.time.LocalDate.of(2026, 6, 1);

  private final List<Map<String, Object>> entries = new ArrayList<>();

  /** A helping of a feeding: food, grams, and what was soaked on it. */
  public static Map<String, Object> helping(String food, double grams, String... supplements) {
    return Map.of("food", food, "grams", grams, "supplements", List.of(supplements));
  }

  public Log tank(double temperatureC, String... usualFoods) {
    return record("tank", "tank", Map.of("name", "Tank", "temperatureC", temperatureC, "usualFoods", List.of(usualFoods)));
  }

  public Log fish(String key, String species, double grams) {
    return fish(key, species, grams, Map.of());
  }

  public Log fish(String key, String species, double grams, Map<String, Object> more) {
    Map<String, Object> set = new HashMap<>(Map.of("name", key, "species", species, "weightGrams", grams));
    set.putAll(more);
    return record("fish", key, set);
  }

  public Log record(String record, String key, Map<String, Object> set) {
    return entry("record", 0, "07:00", Map.of("record", record, "key", key, "set", set));
  }

  @SafeVarargs
  public final Log fed(int day, String time, Map<String, Object>... helpings) {
    return entry("feeding", day, time, Map.of("items", List.of(helpings)));
  }

  /** The same meal at the same time on each of some days. */
  @SafeVarargs
  public final Log fedDaily(int from, int to, String time, Map<String, Object>... helpings) {
    for (int day = from; day <= to; day++) {
      fed(day, time, helpings);
    }
    return this;
  }

  public Log saw(int day, String fish, String saw, Map<String, Object> more) {
    Map<String, Object> body = new HashMap<>(Map.of("fish", fish, "saw", saw));
    body.putAll(more);
    return entry("observation", day, "09:00", body);
  }

  public Log entry(String kind, int day, String time, Map<String, Object> body) {
    Map<String, Object> entry = new HashMap<>();
    entry.put("id", "e" + entries.size());
    entry.put("kind", kind);
    entry.put("v", 1.0);
    entry.put("by", "teo");
    entry.put("happenedAt", at(day, time));
    entry.put("seq", entries.size() + 1.0);
    entry.put("body", body);
    entries.add(entry);
    return this;
  }

  /** The id of the entry that was written last. */
  public String last() {
    return String.valueOf(entries.get(entries.size() - 1).get("id"));
  }

  public List<Node> nodes() {
    List<Node> nodes = new ArrayList<>();
    entries.forEach(entry -> nodes.add(new MapNode(entry)));
    return nodes;
  }

  public Map<String, Object> today(int day, String time) {
    return today(nodes(), day, time);
  }

  public static Map<String, Object> today(List<Node> nodes, int day, String time) {
    TankBook book = new TankBook(REFERENCE);
    book.take(nodes);
    return book.today(at(day, time));
  }

  /** Who is reckoned to have got how much of the feeding written last. */
  @SuppressWarnings("unchecked")
  public List<Map<String, Object>> sharesOfLast(int day) {
    TankBook book = new TankBook(REFERENCE);
    book.take(nodes());
    return (List<Map<String, Object>>) (List<?>) book.shares(at(day, "20:00"), last());
  }

  public List<String> rules(int day) {
    return findings(day).stream().map(finding -> String.valueOf(finding.get("rule"))).toList();
  }

  @SuppressWarnings("unchecked")
  public List<Map<String, Object>> findings(int day) {
    return (List<Map<String, Object>>) today(day, "21:00").get("findings");
  }

  public static String at(int day, String time) {
    return FIRST.plusDays(day) + "T" + time + ":00+02:00";
  }

  @Override
  public String toString() {
    return Arrays.toString(entries.toArray());
  }
}
