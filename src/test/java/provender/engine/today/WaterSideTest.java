package provender.engine.today;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static provender.engine.Log.helping;
import static provender.engine.Told.list;
import static provender.engine.Told.number;
import static provender.engine.Told.one;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import provender.contract.TankBook;
import provender.engine.Log;
import provender.engine.food.Composition;

/** The water of a tank in the log: a thousand litres, ten grams of pellet a day. */
class WaterSideTest {
  private static final Composition PELLET = requireNonNull(Log.REFERENCE.food("pellet_small_soft")).composition();
  /** 10 g × 0.42 protein / 6.25 × 4.4266 in 1000 L. */
  private static final double NITRATE_A_DAY = 10 * PELLET.proteinGrams() / 100 / 6.25 * (14.007 + 3 * 15.999) / 14.007;
  private static final double PHOSPHATE_A_DAY = 10 * PELLET.phosphorusMg() / 1000 / 100 * (30.974 + 4 * 15.999) / 30.974;

  private static Log tank(Map<String, Object> more) {
    Map<String, Object> set = new HashMap<>(Map.of("name", "Tank", "temperatureC", 26.0, "volumeLitres", 1000.0));
    set.putAll(more);
    return new Log().record("tank", "tank", set).fish("tang", "Zebrasoma flavescens", 100).fedDaily(0, 60, "08:00", helping("pellet_small_soft", 10));
  }

  private static Map<String, Object> water(Log log, int day) {
    TankBook book = new TankBook(Log.REFERENCE);
    book.take(log.nodes());
    return book.water(Log.at(day, "20:00"));
  }

  private static Map<String, Object> ion(Log log, int day, String ion) {
    return one(list(water(log, day), "ions"), "ion", ion);
  }

  /** Nitrate as a tank with that export would show it, every fifth day at noon. */
  private static Log tested(Log log, int tests, double export, double scatter) {
    Random random = new Random(5);
    for (int i = 0; i < tests; i++) {
      double days = 5 * i;
      double level = 10 + (NITRATE_A_DAY - export) * days + scatter * random.nextGaussian();
      log.entry("water-test", 5 * i, "09:00", Map.of("nitrateMgL", level));
    }
    return log;
  }

  @Test
  void all_that_was_fed_counts_eaten_or_not() {
    assertThat(number(ion(tank(Map.of()), 30, "nitrate"), "inputMgLPerDay", "value")).isEqualTo(NITRATE_A_DAY, offset(1e-9));
    assertThat(number(ion(tank(Map.of()), 30, "phosphate"), "inputMgLPerDay", "value")).isEqualTo(PHOSPHATE_A_DAY, offset(1e-9));
    assertThat(number(water(tank(Map.of()), 30), "hand", "gramsPerDay")).isEqualTo(10, offset(1e-9));
    assertThat(number(water(tank(Map.of()), 30), "hand", "proteinFraction")).isEqualTo(0.42, offset(1e-9));
    assertThat(number(water(tank(Map.of()), 3), "hand", "gramsPerDay")).isEqualTo(10, offset(1e-9));
  }

  @Test
  void what_feeders_give_stands_beside_what_hands_give() {
    Log log = tank(Map.of()).record("feeder", "left", Map.of("times", List.of("12:00"), "drops", List.of(4.0), "running", true,
        "mix", List.of(Map.of("food", "pellet_small_soft", "share", 1.0))));
    log.entry("weighing", 0, "07:30", Map.of("feeder", "left", "grams", List.of(0.4, 0.6), "dropsPerWeighing", 1.0));
    assertThat(number(water(log, 30), "feeders", "gramsPerDay")).isEqualTo(2, offset(1e-9));
    assertThat(number(water(log, 30), "hand", "gramsPerDay")).isEqualTo(10, offset(1e-9));
    assertThat(number(ion(log, 30, "nitrate"), "inputMgLPerDay", "value")).isEqualTo(1.2 * NITRATE_A_DAY, offset(1e-9));
    assertThat(number(water(tank(Map.of()), 30), "feeders", "proteinFraction")).isZero();
  }

  @Test
  void a_volume_nobody_stated_follows_from_the_inner_size_less_rock_and_sand() {
    Log log = new Log().record("tank", "tank", Map.of("innerLengthCm", 200.0, "innerWidthCm", 80.0, "waterHeightCm", 70.0, "displacedPart", 0.1))
        .fish("tang", "Zebrasoma flavescens", 100);
    assertThat(number(water(log, 3), "volumeLitres")).isEqualTo(1008, offset(1e-9));
    log.record("tank", "tank", Map.of("volumeLitres", 990.0));
    assertThat(number(water(log, 3), "volumeLitres")).isEqualTo(990);
    assertThat(water(new Log().record("tank", "tank", Map.of("innerLengthCm", 200.0)).fish("tang", "x", 1), 3)).doesNotContainKey("volumeLitres");
  }

  @Test
  void export_is_fitted_from_the_fourth_test_on_and_before_that_nothing_is_said() {
    assertThat(ion(tested(tank(Map.of()), 3, 1, 0.3), 20, "nitrate")).doesNotContainKeys("export", "now", "inFourWeeks");
    assertThat(list(ion(tested(tank(Map.of()), 3, 1, 0.3), 20, "nitrate"), "series")).isEmpty();
    Map<String, Object> fitted = ion(tested(tank(Map.of()), 8, 1, 0), 40, "nitrate");
    assertThat(number(fitted, "export", "value")).isEqualTo(1, offset(1e-6));
    assertThat(number(fitted, "export", "why", 0, "inputs", 0, "value")).isEqualTo(8);
    Map<String, Object> noisy = ion(tested(tank(Map.of()), 8, 1, 0.5), 40, "nitrate");
    assertThat(number(noisy, "export", "low")).isLessThan(1);
    assertThat(number(noisy, "export", "high")).isGreaterThan(1);
    assertThat(list(noisy, "points")).hasSize(8);
  }

  /** In four weeks: (input − export) × 28 more than at the end of today. */
  @Test
  void the_level_goes_on_as_it_has_with_a_band_that_widens() {
    Map<String, Object> ion = ion(tested(tank(Map.of()), 8, 1, 0.5), 40, "nitrate");
    double export = number(ion, "export", "value");
    assertThat(number(ion, "inFourWeeks", "value") - number(ion, "now", "value")).isEqualTo(28 * (NITRATE_A_DAY - export), offset(0.5));
    assertThat(number(ion, "inFourWeeks", "high") - number(ion, "inFourWeeks", "low"))
        .isGreaterThan(number(ion, "now", "high") - number(ion, "now", "low"));
    assertThat(list(ion, "series")).hasSize(40 + 28 + 1);
  }

  @Test
  void an_exchange_takes_its_part_of_what_is_there() {
    Log log = tested(tank(Map.of()), 4, NITRATE_A_DAY, 0);
    log.entry("exchange", 20, "12:00", Map.of("litres", 200.0, "sourceNitrateMgL", 2.0));
    log.entry("water-test", 21, "09:00", Map.of("nitrateMgL", 0.8 * 10 + 0.2 * 2));
    Map<String, Object> ion = ion(log, 21, "nitrate");
    assertThat(number(ion, "export", "value")).isEqualTo(NITRATE_A_DAY, offset(0.02));
    assertThat(number(water(log, 21), "habit", "fraction")).isZero();
    log.entry("exchange", 27, "12:00", Map.of("litres", 100.0));
    assertThat(number(water(log, 28), "habit", "fraction")).isEqualTo(0.15, offset(1e-9));
    assertThat(number(water(log, 28), "habit", "everyDays")).isEqualTo(7);
    assertThat(list(water(log, 28), "exchanges")).hasSize(2);
  }

  @Test
  void nitrate_that_will_pass_what_is_wanted_is_found_and_a_balanced_tank_is_quiet() {
    Log rising = tested(tank(Map.of("wantedNitrateMgL", 30.0)), 8, 0.5, 0.3);
    Map<String, Object> found = one(rising.findings(40), "rule", "nitrate-rises");
    assertThat(number(found, "facts", "wanted")).isEqualTo(30);
    assertThat(number(found, "facts", "then")).isGreaterThan(30);
    assertThat(number(found, "facts", "export")).isEqualTo(0.5, offset(0.2));
    assertThat(tested(tank(Map.of("wantedNitrateMgL", 30.0)), 8, NITRATE_A_DAY, 0.3).rules(40)).doesNotContain("nitrate-rises");
    assertThat(tested(tank(Map.of("wantedNitrateMgL", 500.0)), 8, 0.5, 0.3).rules(40)).doesNotContain("nitrate-rises");
  }

  @Test
  void a_test_four_times_what_was_expected_is_found_and_one_that_follows_is_not() {
    Log log = tested(tank(Map.of()), 7, NITRATE_A_DAY, 0.3);
    assertThat(log.rules(34)).doesNotContain("nitrate-jump");
    log.entry("water-test", 35, "09:00", Map.of("nitrateMgL", 44.0));
    Map<String, Object> found = one(log.findings(35), "rule", "nitrate-jump");
    assertThat(number(found, "facts", "mgL")).isEqualTo(44);
    assertThat(number(found, "facts", "low")).isLessThan(10);
    assertThat(number(found, "facts", "high")).isBetween(10.0, 15.0);
    assertThat(log.rules(43)).doesNotContain("nitrate-jump");
    // It waits for a second test before it moves the level, and then it does.
    assertThat(number(ion(log, 36, "nitrate"), "now", "high")).isLessThan(15);
    log.entry("water-test", 38, "09:00", Map.of("nitrateMgL", 44.0));
    assertThat(number(ion(log, 38, "nitrate"), "now", "high")).isGreaterThan(30);
  }

  @Test
  void any_ammonia_is_found_for_a_week_or_until_a_test_without() {
    Log log = tank(Map.of()).entry("water-test", 10, "09:00", Map.of("ammoniaMgL", 0.1));
    assertThat(one(log.findings(10), "rule", "ammonia")).containsEntry("severity", "high");
    assertThat(log.rules(17)).contains("ammonia");
    assertThat(log.rules(18)).doesNotContain("ammonia");
    assertThat(log.rules(9)).doesNotContain("ammonia");
    assertThat(log.entry("water-test", 12, "09:00", Map.of("ammoniaMgL", 0.05)).rules(12)).doesNotContain("ammonia");
  }

  @Test
  void without_a_volume_nothing_is_reckoned_and_the_volume_is_asked_for() {
    Log log = tested(new Log().tank(26).fish("tang", "Zebrasoma flavescens", 100).fedDaily(0, 40, "08:00", helping("pellet_small_soft", 1)), 8, 1, 0.1);
    assertThat(log.rules(40)).contains("no-volume").doesNotContain("nitrate-rises", "nitrate-jump");
    assertThat(ion(log, 40, "nitrate")).doesNotContainKeys("inputMgLPerDay", "export");
    assertThat(tested(tank(Map.of()), 8, 1, 0.1).rules(40)).doesNotContain("no-volume");
  }

  @Test
  void an_own_food_without_a_word_of_phosphorus_is_credited_with_some_of_its_protein() {
    Log log = new Log().record("tank", "tank", Map.of("volumeLitres", 1000.0)).fish("tang", "Zebrasoma flavescens", 100)
        .record("food", "mash", Map.of("waterGrams", 50.0, "proteinGrams", 20.0, "fatGrams", 5.0))
        .record("food", "known", Map.of("waterGrams", 50.0, "proteinGrams", 20.0, "fatGrams", 5.0, "phosphorusMg", 700.0))
        .fedDaily(0, 9, "08:00", helping("mash", 10), helping("known", 10));
    assertThat(number(water(log, 9), "hand", "phosphorusFraction")).isEqualTo((10 * 0.2 * 0.02 + 10 * 0.007) / 20, offset(1e-9));
  }

  @Test
  void what_was_tested_is_listed_newest_first() {
    Log log = tank(Map.of()).entry("water-test", 3, "09:00", Map.of("nitrateMgL", 5.0, "alkalinityDkh", 8.0, "salinityPpt", 35.0, "phosphateMgL", -1.0))
        .entry("water-test", 5, "10:30", Map.of("phosphateMgL", 0.1)).entry("dosing", 6, "10:00", Map.of("what", "media"));
    assertThat(list(water(log, 9), "tests")).extracting(test -> test.get("minute")).containsExactly(630.0, 540.0);
    assertThat(list(water(log, 9), "tests").get(1)).containsEntry("alkalinityDkh", 8.0).containsEntry("salinityPpt", 35.0).doesNotContainKey("phosphateMgL");
    assertThat(number(water(log, 9), "dosings")).isEqualTo(1);
    assertThat(list(ion(log, 9, "phosphate"), "points")).hasSize(1);
  }
}
