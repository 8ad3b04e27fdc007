package provender.engine.diet;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static provender.engine.Log.helping;
import static provender.engine.Told.at;
import static provender.engine.Told.list;
import static provender.engine.Told.number;
import static provender.engine.Told.one;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import provender.engine.Log;

/** What a finding carries: since when, how much, by which word, what to offer and how much of it. */
class FindingsTest {
  private static final String TANG = "Zebrasoma flavescens";
  private static final String LIONFISH = "Pterois volitans";
  private static final String ANGEL = "Pomacanthus imperator";
  private static final String PUFFER = "Diodon holocanthus";

  private static double kj(String food) {
    return requireNonNull(Log.REFERENCE.food(food)).kjPerGram();
  }

  private static double due(String guild, double grams) {
    return 40 * Math.pow(grams / 1000, 0.8) * requireNonNull(Log.REFERENCE.guild(guild)).rationFactor();
  }

  @Test
  void too_little_food_says_how_much_of_what_was_due_since_when_and_what_a_days_ration_would_be() {
    double eachDay = due("piscivore", 100);
    double half = 0.5 * eachDay / kj("sand_lance_whole");
    double whole = eachDay / kj("sand_lance_whole");
    Log log = new Log().tank(27, "sand_lance_whole", "moon_dust").fish("it", LIONFISH, 100)
        .fedDaily(0, 7, "08:00", helping("sand_lance_whole", whole)).fedDaily(8, 14, "08:00", helping("sand_lance_whole", half));
    Map<String, Object> found = one(log.findings(15), "rule", "too-little-food");
    assertThat(number(found, "facts", "percent")).isEqualTo(50, offset(1e-6));
    assertThat(number(found, "facts", "givenKj")).isEqualTo(3.5 * eachDay, offset(1e-6));
    assertThat(number(found, "facts", "dueKj")).isEqualTo(7 * eachDay, offset(1e-6));
    assertThat(number(found, "facts", "daysOutside")).isEqualTo(7);
    assertThat(number(found, "facts", "windowDays")).isEqualTo(7);
    assertThat(number(found, "days")).isEqualTo(8);
    assertThat(list(found, "offer")).singleElement().satisfies(offer -> assertThat((Double) offer.get("grams")).isEqualTo(whole, offset(1e-6)));
    assertThat(at(found, "why", 0, "what")).isEqualTo("givenOverDueLow");
    assertThat(number(found, "why", 0, "value")).isEqualTo(0.5, offset(1e-6));
    assertThat(log.rules(10)).doesNotContain("too-little-food");
  }

  @Test
  void a_limit_met_to_the_point_is_not_broken_and_three_days_are_needed_to_judge() {
    double each = due("piscivore", 100) / kj("sand_lance_whole");
    Log sparse = new Log().tank(27, "sand_lance_whole").fish("it", LIONFISH, 100).fedDaily(0, 9, "08:00", helping("sand_lance_whole", 0.1 * each));
    assertThat(sparse.rules(2)).doesNotContain("too-little-food");
    assertThat(sparse.rules(3)).contains("too-little-food");
    Log just = new Log().tank(27, "sand_lance_whole").fish("it", LIONFISH, 100).fedDaily(0, 9, "08:00", helping("sand_lance_whole", 0.601 * each));
    assertThat(just.rules(9)).doesNotContain("too-little-food");
    Log rich = new Log().tank(27, "sand_lance_whole").fish("it", LIONFISH, 100).fedDaily(0, 9, "08:00", helping("sand_lance_whole", 1.499 * each));
    assertThat(rich.rules(9)).doesNotContain("too-much-food");
    Log over = new Log().tank(27, "sand_lance_whole").fish("it", LIONFISH, 100).fedDaily(0, 9, "08:00", helping("sand_lance_whole", 1.6 * each));
    Map<String, Object> found = one(over.findings(9), "rule", "too-much-food");
    assertThat(number(found, "facts", "percent")).isEqualTo(160, offset(1e-6));
    assertThat(list(found, "offer")).isEmpty();
    assertThat(at(found, "why", 0, "what")).isEqualTo("givenOverDueHigh");
  }

  @Test
  void a_fish_in_isolation_is_judged_by_what_it_was_handed() {
    double each = due("turf_grazer", 100) / kj("nori_dried");
    Log log = new Log().tank(27, "nori_dried").fish("display", TANG, 100).fish("new", TANG, 100, Map.of("place", "isolation"));
    for (int day = 0; day <= 9; day++) {
      log.entry("feeding", day, "08:00", Map.of("items",
          List.of(helping("nori_dried", each), Map.of("food", "nori_dried", "grams", 0.2 * each, "fish", "new"))));
    }
    assertThat(log.findings(9)).filteredOn(found -> found.get("rule").equals("too-little-food")).singleElement()
        .satisfies(found -> assertThat(found.get("fish")).isEqualTo(List.of("new")));
  }

  @Test
  void too_much_of_one_thing_says_its_part_the_limit_and_offers_a_tenth_of_the_days_due() {
    Log log = new Log().tank(27, "ulva_dried").fish("it", TANG, 100).fish("other", TANG, 50)
        .fedDaily(0, 12, "08:00", helping("nori_dried", 0.9), helping("kelp_dried", 0.1));
    Map<String, Object> found = one(log.findings(12), "rule", "too-much-kelp");
    double kelp = 0.1 * requireNonNull(Log.REFERENCE.food("kelp_dried")).dryPerGram();
    double nori = 0.9 * requireNonNull(Log.REFERENCE.food("nori_dried")).dryPerGram();
    assertThat(number(found, "facts", "percent")).isEqualTo(100 * kelp / (kelp + nori), offset(0.5));
    assertThat(number(found, "facts", "limitPercent")).isEqualTo(5);
    assertThat(number(found, "facts", "windowDays")).isEqualTo(7);
    assertThat(number(found, "days")).isEqualTo(7);
    double tenth = 0.1 * (due("turf_grazer", 100) + due("turf_grazer", 50));
    assertThat(list(found, "offer")).extracting(offer -> offer.get("food")).containsExactly("ulva_dried", "nori_dried");
    assertThat(number(found, "offer", 0, "grams")).isEqualTo(tenth / kj("ulva_dried"), offset(1e-9));
    assertThat(at(found, "why", 0, "source")).isEqualTo("penglase2013");
    assertThat(number(found, "why", 0, "value")).isEqualTo(number(found, "facts", "percent") / 100, offset(1e-12));
  }

  @Test
  void a_lack_says_since_when_for_each_fish_and_offers_what_brings_the_wanted_share() {
    Log log = new Log().tank(27, "sponge_prepared_frozen").fish("angel", ANGEL, 400).fish("dwarf", ANGEL, 100)
        .fedDaily(0, 5, "08:00", helping("sponge_prepared_frozen", 9)).fedDaily(6, 12, "08:00", helping("mysis_frozen", 9));
    Map<String, Object> found = one(log.findings(12), "rule", "no-sponge");
    assertThat(number(found, "days")).isEqualTo(7);
    assertThat(number(found, "facts", "gapDays")).isEqualTo(3);
    assertThat(list(found, "why")).extracting(step -> step.get("what")).containsExactly("daysWithout:angel", "daysWithout:dwarf");
    assertThat(at(found, "component")).isEqualTo("sponge");
    double target = requireNonNull(requireNonNull(Log.REFERENCE.guild("sponge_angel")).band(provender.engine.food.Component.SPONGE)).targetShare();
    double share = requireNonNull(Log.REFERENCE.food("sponge_prepared_frozen")).share(provender.engine.food.Component.SPONGE);
    double wanted = target * (due("sponge_angel", 400) + due("sponge_angel", 100));
    assertThat(number(found, "offer", 0, "grams")).isEqualTo(wanted / (kj("sponge_prepared_frozen") * share), offset(1e-9));
    assertThat(number(found, "why", 0, "value")).isEqualTo(7);
    assertThat(at(found, "why", 0, "source")).isEqualTo(
        requireNonNull(requireNonNull(Log.REFERENCE.guild("sponge_angel")).band(provender.engine.food.Component.SPONGE)).source());
  }

  @Test
  void teeth_decide_how_long_a_crusher_may_go_without_something_hard() {
    Log log = new Log().tank(27, "clam_half_shell").fish("puffer", PUFFER, 300).fed(0, "08:00", helping("clam_half_shell", 20))
        .fedDaily(1, 9, "08:00", helping("mysis_frozen", 9));
    assertThat(log.rules(3)).doesNotContain("no-hard-food");
    Map<String, Object> found = one(log.findings(4), "rule", "no-hard-food");
    assertThat(number(found, "facts", "gapDays")).isEqualTo(3);
    assertThat(at(found, "why", 0, "source")).isEqualTo("practice");
  }

  @Test
  void heavier_findings_come_first() {
    Log log = new Log().tank(33, "nori_dried").fish("it", TANG, 100).fish("angel", ANGEL, 300).fedDaily(0, 20, "08:00", helping("spinach", 1), helping("shrimp_peeled", 9));
    List<String> order = log.findings(20).stream().map(found -> String.valueOf(found.get("severity"))).toList();
    assertThat(order).contains("high", "medium").isSortedAccordingTo((one, other) ->
        Integer.compare(List.of("high", "medium", "low").indexOf(one), List.of("high", "medium", "low").indexOf(other)));
  }

  @Test
  void hot_water_says_how_hot_and_which_alarm() {
    Map<String, Object> found = one(new Log().tank(33).fish("it", TANG, 100).fed(0, "08:00", helping("nori_dried", 0.6)).findings(0), "rule", "hot-water");
    assertThat(number(found, "facts", "temperatureC")).isEqualTo(33);
    assertThat(number(found, "facts", "alarmC")).isEqualTo(32);
  }

  @Test
  void a_tank_nobody_fed_since_does_not_say_that_a_fish_will_not_eat() {
    Log log = new Log().tank(27).fish("it", LIONFISH, 100).fedDaily(0, 5, "08:00", helping("sand_lance_whole", 2));
    assertThat(log.rules(20)).doesNotContain("not-eating").contains("too-little-food");
  }
}
