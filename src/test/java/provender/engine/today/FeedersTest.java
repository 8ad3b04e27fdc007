package provender.engine.today;

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

/** An auto-feeder in the log: what it is reckoned to have given, how long it lasts, and when something is wrong with it. */
class FeedersTest {
  private static final double PELLET = requireNonNull(Log.REFERENCE.food("pellet_small_soft")).kjPerGram();
  private static final List<Double> TEN = List.of(0.52, 0.47, 0.55, 0.49, 0.51, 0.46, 0.53, 0.50, 0.48, 0.54);
  private static final double MEAN = 0.505;

  private static Log tank() {
    return new Log().tank(27, "pellet_small_soft").fish("tang", "Zebrasoma flavescens", 100);
  }

  private static Map<String, Object> settings(boolean running, List<String> times, List<Double> drops) {
    return Map.of("name", "Left", "times", times, "drops", drops, "running", running, "hopperGrams", 250.0,
        "mix", List.of(Map.of("food", "pellet_small_soft", "share", 1.0)));
  }

  /** Set on day 0 at 07:00, weighed at once: two drops at 08:00 and one at 16:00. */
  private static Log running() {
    return weighed(tank().record("feeder", "left", settings(true, List.of("08:00", "16:00"), List.of(2.0, 1.0))), 0);
  }

  private static Log weighed(Log log, int day) {
    return log.entry("weighing", day, "07:10", Map.of("feeder", "left", "grams", TEN, "dropsPerWeighing", 1.0));
  }

  private static Log filled(Log log, int day, double left, double added) {
    return log.entry("hopper-fill", day, "07:20", Map.of("feeder", "left", "leftGrams", left, "addedGrams", added));
  }

  private static Map<String, Object> left(Map<String, Object> today) {
    return one(list(today, "feeders"), "key", "left");
  }

  @Test
  void what_fell_up_to_now_counts_as_given_by_the_feeder_and_nobody_has_to_log_it() {
    Log log = running();
    assertThat(number(log.today(3, "07:59"), "ration", "givenFeederKj")).isZero();
    assertThat(number(log.today(3, "08:00"), "ration", "givenFeederKj")).isEqualTo(2 * MEAN * PELLET, offset(1e-9));
    assertThat(number(log.today(3, "20:00"), "ration", "givenFeederKj")).isEqualTo(3 * MEAN * PELLET, offset(1e-9));
    assertThat(number(log.today(3, "20:00"), "ration", "givenHandKj")).isZero();
    assertThat(list(log.today(3, "20:00"), "feedings")).isEmpty();
    assertThat(log.today(3, "20:00")).doesNotContainKey("lastFeeding");
    assertThat(number(log.today(3, "20:00"), "days", 25, "givenKj")).isEqualTo(3 * MEAN * PELLET, offset(1e-9));
    assertThat(number(list(log.today(3, "20:00"), "fish").get(0), "gotGrams")).isEqualTo(3 * MEAN, offset(1e-9));
  }

  @Test
  void a_change_counts_from_the_minute_it_was_made_and_not_before() {
    Log log = running();
    log.entry("record", 5, "12:00", Map.of("record", "feeder", "key", "left", "set", Map.of("drops", List.of(2.0, 4.0))));
    log.entry("record", 7, "12:00", Map.of("record", "feeder", "key", "left", "set", Map.of("running", false)));
    assertThat(number(log.today(4, "20:00"), "ration", "givenFeederKj")).isEqualTo(3 * MEAN * PELLET, offset(1e-9));
    assertThat(number(log.today(5, "20:00"), "ration", "givenFeederKj")).isEqualTo(6 * MEAN * PELLET, offset(1e-9));
    assertThat(number(log.today(6, "20:00"), "ration", "givenFeederKj")).isEqualTo(6 * MEAN * PELLET, offset(1e-9));
    assertThat(number(log.today(7, "20:00"), "ration", "givenFeederKj")).isEqualTo(2 * MEAN * PELLET, offset(1e-9));
    assertThat(number(log.today(8, "20:00"), "ration", "givenFeederKj")).isZero();
    assertThat(number(log.today(8, "20:00"), "days", 23, "givenKj")).isEqualTo(3 * MEAN * PELLET, offset(1e-9));
  }

  @Test
  void a_mix_is_given_by_its_parts() {
    Log log = weighed(tank().record("feeder", "left", Map.of("times", List.of("08:00"), "drops", List.of(2.0), "running", true,
        "mix", List.of(Map.of("food", "pellet_small_soft", "share", 3.0), Map.of("food", "nori_dried", "share", 1.0)))), 0);
    double nori = requireNonNull(Log.REFERENCE.food("nori_dried")).kjPerGram();
    assertThat(number(log.today(1, "20:00"), "ration", "givenFeederKj")).isEqualTo(2 * MEAN * (0.75 * PELLET + 0.25 * nori), offset(1e-9));
    assertThat(left(log.today(1, "20:00")).get("name")).isEqualTo("left");
  }

  @Test
  void drops_weighed_again_count_from_then_on() {
    Log log = running();
    log.entry("weighing", 5, "07:00", Map.of("feeder", "left", "grams", List.of(1.0, 1.02, 0.98), "dropsPerWeighing", 1.0));
    assertThat(number(log.today(4, "20:00"), "ration", "givenFeederKj")).isEqualTo(3 * MEAN * PELLET, offset(1e-9));
    assertThat(number(log.today(5, "20:00"), "ration", "givenFeederKj")).isEqualTo(3 * PELLET, offset(1e-9));
    assertThat(number(left(log.today(5, "20:00")), "drops", "weighings")).isEqualTo(3);
  }

  /** Welch's test against an independent library. */
  @Test
  void drops_from_a_nearly_empty_hopper_are_held_against_those_from_a_full_one() {
    Log log = running();
    double[] low = {0.41, 0.45, 0.43, 0.39, 0.44, 0.42};
    assertThat(left(log.today(2, "20:00"))).doesNotContainKey("levelEffect");
    log.entry("weighing", 1, "07:10", Map.of("feeder", "left", "grams", TEN, "dropsPerWeighing", 1.0, "level", "full"));
    log.entry("weighing", 2, "07:10", Map.of("feeder", "left", "grams", java.util.Arrays.stream(low).boxed().toList(), "dropsPerWeighing", 1.0, "level", "low"));
    Map<String, Object> feeder = left(log.today(2, "20:00"));
    assertThat(number(feeder, "levelEffect", "ratio")).isEqualTo(java.util.Arrays.stream(low).average().orElseThrow() / MEAN, offset(1e-9));
    double independent = new org.hipparchus.stat.inference.TTest().tTest(TEN.stream().mapToDouble(Double::doubleValue).toArray(), low);
    assertThat(number(feeder, "levelEffect", "chance")).isEqualTo(independent, offset(1e-9));
  }

  @Test
  void a_hopper_empties_as_it_gives_with_a_range_and_a_day_it_may_be_empty() {
    Log log = filled(running(), 0, 0, 100);
    Map<String, Object> feeder = left(log.today(10, "07:30"));
    // Ten whole days of three drops, filled after the first morning's look at 07:20.
    assertThat(number(feeder, "levelGrams", "value")).isEqualTo(100 - 30 * MEAN, offset(1e-9));
    assertThat(number(feeder, "levelGrams", "low")).isLessThan(number(feeder, "levelGrams", "value"));
    assertThat(number(feeder, "hopperDays", "value")).isEqualTo((100 - 30 * MEAN) / (3 * MEAN), offset(1e-9));
    assertThat(number(feeder, "hopperDays", "low")).isLessThan(number(feeder, "hopperDays", "value"));
    assertThat(number(feeder, "gramsPerDay", "value")).isEqualTo(3 * MEAN, offset(1e-9));
    assertThat(feeder).doesNotContainKey("found");
  }

  @Test
  void a_fill_without_a_weight_of_the_rest_goes_on_from_what_should_be_there_up_to_the_brim() {
    Log log = filled(running(), 0, 0, 240);
    log.entry("hopper-fill", 10, "07:20", Map.of("feeder", "left", "addedGrams", 100.0));
    assertThat(number(left(log.today(10, "07:30")), "levelGrams", "value")).isEqualTo(250);
    assertThat(left(log.today(10, "07:30"))).doesNotContainKey("found");
  }

  @Test
  void half_of_what_should_have_fallen_still_in_the_hopper_is_a_jam_and_the_days_before_are_put_right() {
    Log log = filled(filled(running(), 0, 0, 100), 30, 100 - 0.5 * 90 * MEAN, 40);
    Map<String, Object> today = log.today(30, "07:30");
    assertThat(left(today)).extracting(one -> at(one, "found", "verdict")).isEqualTo("jam");
    assertThat(number(left(today), "found", "ratio")).isEqualTo(0.5, offset(1e-9));
    Map<String, Object> found = one(log.findings(30), "rule", "feeder-jam");
    assertThat(found).containsEntry("about", "left").containsEntry("severity", "high").containsEntry("days", 30.0);
    assertThat(number(found, "facts", "percent")).isEqualTo(50, offset(1e-9));
    assertThat(number(today, "days", 20, "givenKj")).isEqualTo(0.5 * 3 * MEAN * PELLET, offset(1e-9));
    assertThat(number(today, "days", 27, "givenKj")).isZero();
  }

  @Test
  void a_third_too_much_gone_is_drift_until_the_drops_are_weighed_again_and_what_was_expected_is_nothing() {
    Log log = filled(filled(running(), 0, 0, 100), 30, 100 - 1.35 * 90 * MEAN, 40);
    assertThat(log.rules(30)).contains("feeder-drift").doesNotContain("feeder-jam");
    assertThat(weighed(log, 31).rules(31)).doesNotContain("feeder-drift");
    Log quiet = filled(filled(running(), 0, 0, 100), 30, 100 - 90 * MEAN, 40);
    assertThat(quiet.rules(30)).doesNotContain("feeder-drift", "feeder-jam");
    assertThat(left(quiet.today(30, "08:00"))).extracting(one -> at(one, "found", "verdict")).isEqualTo("asExpected");
  }

  @Test
  void a_hopper_that_may_be_empty_within_three_days_is_found_and_one_that_lasts_is_not() {
    Log log = filled(running(), 0, 0, 20);
    assertThat(log.rules(8)).doesNotContain("hopper-low");
    Map<String, Object> found = one(log.findings(10), "rule", "hopper-low");
    assertThat(number(found, "facts", "daysLow")).isLessThan(3);
    assertThat(number(found, "facts", "daysExpected")).isEqualTo(Math.floor((20 - 33 * MEAN) / (3 * MEAN)));
  }

  @Test
  void a_running_feeder_nobody_weighed_is_found_and_counts_for_nothing() {
    Log log = tank().record("feeder", "left", settings(true, List.of("08:00"), List.of(2.0))).fed(0, "08:00", helping("pellet_small_soft", 0.1));
    assertThat(log.rules(0)).contains("feeder-unweighed");
    assertThat(number(log.today(0, "20:00"), "ration", "givenFeederKj")).isZero();
    assertThat(weighed(log, 0).rules(0)).doesNotContain("feeder-unweighed");
    Log still = tank().record("feeder", "left", settings(false, List.of("08:00"), List.of(2.0))).fed(0, "08:00", helping("pellet_small_soft", 0.1));
    assertThat(still.rules(0)).doesNotContain("feeder-unweighed");
  }

  @Test
  void portions_for_the_dry_part_of_the_ration_are_proposed_and_nothing_is_changed_by_itself() {
    Log log = running().record("tank", "tank", Map.of("feederPart", 0.5));
    Map<String, Object> today = log.today(1, "20:00");
    double target = 0.5 * number(today, "ration", "dueKj", "value");
    assertThat(number(today, "proposal", "targetKj")).isEqualTo(target, offset(1e-9));
    double drops = Math.floor(target / (MEAN * PELLET) + 0.5);
    assertThat(number(today, "proposal", "bringsKj", "value")).isEqualTo(drops * MEAN * PELLET, offset(1e-9));
    assertThat(number(today, "dryPart")).isEqualTo(0.5);
    assertThat(list(today, "proposal", "feeders", 0, "times")).extracting(time -> time.get("minute")).containsExactly(480.0, 960.0);
    assertThat(list(left(today), "times")).extracting(time -> time.get("drops")).containsExactly(2.0, 1.0);
    assertThat(tank().today(0, "20:00")).doesNotContainKey("proposal");
    assertThat(number(running().today(1, "20:00"), "dryPart")).isEqualTo(0.3);
  }

  @Test
  void a_feeder_put_away_is_gone_and_what_cannot_be_read_is_passed_over() {
    Log log = running().record("feeder", "left", Map.of("status", "gone"));
    assertThat(list(log.today(1, "20:00"), "feeders")).isEmpty();
    Log odd = weighed(tank().record("feeder", "left", settings(true, List.of("8 am", "25:00", "08:00", "24:00"), List.of(5.0, 5.0, 2.0, 1.0))), 0);
    odd.entry("weighing", 1, "09:00", Map.of("feeder", "left", "grams", List.of(0.5, -1.0)));
    odd.entry("weighing", 1, "09:00", Map.of("feeder", "left", "grams", List.of(0.5)));
    odd.entry("weighing", 1, "09:00", Map.of("feeder", "other", "grams", List.of(5.0, 6.0)));
    assertThat(number(odd.today(2, "20:00"), "ration", "givenFeederKj")).isEqualTo(2 * MEAN * PELLET, offset(1e-9));
    odd.entry("withdrawal", 2, "21:00", Map.of("entry", "e3", "withdrawn", true));
    assertThat(number(odd.today(2, "20:00"), "ration", "givenFeederKj")).isZero();
  }
}
