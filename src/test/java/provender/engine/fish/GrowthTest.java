package provender.engine.fish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import provender.engine.Log;
import provender.engine.quantity.Day;
import provender.engine.quantity.Range;
import provender.engine.source.Basis;
import provender.engine.source.Step;

class GrowthTest {
  /** Zebrasoma scopas, Schiettekatte et al. 2020: Linf 19 cm, K 0.69 a year, t0 -0.021. */
  private static final Growth TANG = new Growth(19, 0.69, -0.021, 0.02455, 2.98);
  private static final GrowthCurve CURVE = new GrowthCurve(19, 0.69, "schiettekatte2020");
  private static final LengthWeight RELATION = new LengthWeight(0.02455, 2.98, "TL", Range.exactly(1), "schiettekatte2020");
  private static final Day DAY = Day.parse("2026-06-15");

  @ParameterizedTest
  @CsvSource({"1,9.607", "2,14.29", "3,16.64"})
  void the_curve_passes_through_its_published_points(double years, double cm) {
    assertThat(TANG.lengthAtCm(years)).isEqualTo(cm, offset(0.006));
    assertThat(TANG.ageYears(TANG.lengthAtCm(years))).isEqualTo(years, offset(1e-12));
  }

  @Test
  void a_year_on_the_curve_is_the_same_with_and_without_knowing_the_age() {
    assertThat(TANG.lengthAfterCm(TANG.lengthAtCm(1), 365)).isEqualTo(TANG.lengthAtCm(2), offset(1e-9));
    assertThat(TANG.lengthAfterCm(19, 1000)).isEqualTo(19);
  }

  /** Zebrasoma scopas a 0.02455, b 2.98; a length read through glass is off by 2.1 cm (Harvey et al. 2001). */
  @Test
  void a_mass_from_a_length_through_glass_has_the_published_spread() {
    var range = RELATION.grams(20, 2.1);
    assertThat(range.value()).isEqualTo(185.0, offset(0.1));
    assertThat(range.high() / range.value()).isEqualTo(1.3465, offset(0.0001));
    assertThat(range.low() / range.value()).isEqualTo(1 - 0.2815, offset(0.0001));
  }

  @Test
  void a_weighed_mass_goes_before_a_length_and_a_length_before_a_guess() {
    Measurement length = Measurement.length(DAY.plus(-10), 20, 1);
    Measurement weighed = Measurement.weighed(DAY, 150);
    assertThat(weight(length, weighed).grams().basis()).isEqualTo(Basis.MEASURED);
    assertThat(weight(length, weighed).grams().value()).isEqualTo(150);
    assertThat(weight(length).grams().basis()).isEqualTo(Basis.ESTIMATED);
    assertThat(weight().grams().basis()).isEqualTo(Basis.ASSUMED);
    assertThat(weight().ageDays()).isZero();
  }

  /** Keeping practice: 0.6 of the greatest length, give or take a third; 15 cm and W = 0.02 L^3 ± 40 % where the species is unknown. */
  @Test
  void a_fish_nobody_measured_is_guessed_from_its_species_and_an_unknown_one_from_nothing() {
    Weight known = still();
    assertThat(known.grams().value()).isEqualTo(0.0195 * Math.pow(12, 2.98), offset(1e-9));
    assertThat(known.grams().range().low()).isEqualTo(known.grams().value() * Math.exp(-Math.hypot(2.98 * Math.log(1.5), Math.log(1 / 0.6))), offset(1e-9));
    assertThat(known.grams().basis()).isEqualTo(Basis.ASSUMED);
    Weight unknown = Weight.of(new Fish("it", "it", "x", null, guild(), 1, false, true, 1, null, List.of()), DAY, Log.REFERENCE.constants());
    assertThat(unknown.grams().value()).isEqualTo(0.02 * Math.pow(15, 3), offset(1e-9));
    assertThat(unknown.grams().range().high()).isGreaterThan(1.4 * unknown.grams().value());
    assertThat(unknown.grams().range().low()).isLessThan(0.6 * unknown.grams().value());
    assertThat(unknown.isStale(Log.REFERENCE.constants())).isFalse();
  }

  @Test
  void a_length_with_a_stated_error_is_closer_than_one_read_through_the_glass() {
    Weight stated = still(Measurement.length(DAY, 15, 0.5));
    Weight glass = still(Measurement.length(DAY, 15, Double.NaN));
    assertThat(stated.grams().why().get(1).value()).isEqualTo(0.5);
    assertThat(stated.grams().why().get(1).source()).isEqualTo(Step.ENTERED);
    assertThat(glass.grams().why().get(1).value()).isEqualTo(2.1);
    assertThat(glass.grams().why().get(1).source()).isEqualTo("harvey2001");
    assertThat(glass.grams().range().high()).isGreaterThan(stated.grams().range().high());
  }

  @Test
  void before_the_first_measurement_the_first_one_stands() {
    Weight early = Weight.of(fish(Measurement.weighed(DAY.plus(5), 150), Measurement.weighed(DAY.plus(9), 170)), DAY, Log.REFERENCE.constants());
    assertThat(early.grams().value()).isEqualTo(150);
    assertThat(early.ageDays()).isZero();
  }

  /** Gain in a day recomputed from the parameters of Schiettekatte et al. 2020 at 10, 15 and 18 cm. */
  @ParameterizedTest
  @CsvSource({"10,0.1190", "15,0.1179", "18,0.04226"})
  void a_growing_tang_gains_what_its_curve_says_and_at_least_nothing(double cm, double grams) {
    Range gain = CURVE.gainGrams(RELATION, cm);
    assertThat(gain.value()).isEqualTo(grams, offset(0.00006));
    assertThat(gain.low()).isZero();
    assertThat(gain.high()).isEqualTo(gain.value());
  }

  /** Derived: 19 − 9 × exp(−0.69) = 14.486 cm after a year from 10 cm. */
  @Test
  void a_fish_of_a_known_curve_is_carried_along_it_since_it_was_measured() {
    Weight then = weight(Measurement.length(DAY, 10, 0));
    Weight now = weight(Measurement.length(DAY.plus(-365), 10, 0));
    assertThat(now.grams().value() / then.grams().value()).isEqualTo(Math.pow(14.486 / 10, 2.98), offset(0.001));
    assertThat(now.grams().range().low()).isEqualTo(then.grams().range().low());
    assertThat(now.grams().range().high() / then.grams().range().high()).isEqualTo(Math.pow(14.486 / 10, 2.98), offset(0.001));
    assertThat(now.grams().why()).extracting(Step::what).endsWith("massFromLength", "grown");
    assertThat(now.grows()).isTrue();
    assertThat(now.ageDays()).isEqualTo(365);
  }

  @Test
  void a_weighed_fish_that_grew_since_is_an_estimate_and_not_stale() {
    Weight now = weight(Measurement.weighed(DAY.plus(-91), 50));
    assertThat(now.grams().value()).isGreaterThan(50);
    assertThat(now.grams().basis()).isEqualTo(Basis.ESTIMATED);
    assertThat(now.isStale(Log.REFERENCE.constants())).isFalse();
    assertThat(weight(Measurement.weighed(DAY, 50)).grams().basis()).isEqualTo(Basis.MEASURED);
  }

  @Test
  void a_fish_longer_than_its_curve_gets_gains_nothing() {
    assertThat(weight(Measurement.weighed(DAY.plus(-200), 600)).grams().value()).isEqualTo(600, offset(1e-9));
    assertThat(weight(Measurement.weighed(DAY.plus(-200), 600)).gainGrams().high()).isZero();
    assertThat(CURVE.lengthAfterCm(RELATION, 19, 10)).isEqualTo(19);
    assertThat(CURVE.lengthAfterCm(RELATION, 10, 0)).isEqualTo(10);
  }

  @Test
  void where_no_curve_is_known_a_fish_stands_still_and_goes_stale_after_ninety_days() {
    assertThat(still(90).isStale(Log.REFERENCE.constants())).isFalse();
    assertThat(still(91).isStale(Log.REFERENCE.constants())).isTrue();
    assertThat(still(91).grams().value()).isEqualTo(150);
    assertThat(still(91).gainGrams()).isEqualTo(Range.ZERO);
  }

  private static Weight still(int days) {
    return still(Measurement.weighed(DAY.plus(-days), 150));
  }

  private static Weight still(Measurement... measurements) {
    Fish fish = new Fish("it", "it", "Zebrasoma flavescens", Log.REFERENCE.species("Zebrasoma flavescens"), guild(), 1, false, true, 1, null,
        List.of(measurements));
    return Weight.of(fish, DAY, Log.REFERENCE.constants());
  }

  @Test
  void a_fish_that_arrived_later_was_not_here_before() {
    Fish fish = new Fish("it", "it", "x", null, guild(), 1, false, true, 1, DAY, List.of());
    assertThat(fish.wasHereOn(DAY.plus(-1))).isFalse();
    assertThat(fish.wasHereOn(DAY)).isTrue();
    assertThat(new Fish("it", "it", "x", null, guild(), 1, false, false, 1, null, List.of()).wasHereOn(DAY)).isFalse();
  }

  @Test
  void a_fish_that_moved_out_still_ate_on_the_days_before() {
    Fish gone = new Fish("it", "it", "x", null, guild(), 1, false, false, 1, DAY.plus(-9), DAY, List.of());
    assertThat(gone.wasHereOn(DAY.plus(-10))).isFalse();
    assertThat(gone.wasHereOn(DAY.plus(-1))).isTrue();
    assertThat(gone.wasHereOn(DAY)).isFalse();
  }

  private static Weight weight(Measurement... measurements) {
    return Weight.of(fish(measurements), DAY, Log.REFERENCE.constants());
  }

  private static Fish fish(Measurement... measurements) {
    return new Fish("it", "it", "Zebrasoma scopas", Log.REFERENCE.species("Zebrasoma scopas"), guild(), 1, false, true, 1, null, List.of(measurements));
  }

  private static Guild guild() {
    return java.util.Objects.requireNonNull(Log.REFERENCE.guild("turf_grazer"));
  }
}
