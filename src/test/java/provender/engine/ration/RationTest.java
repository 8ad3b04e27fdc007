package provender.engine.ration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import provender.engine.Log;
import provender.engine.quantity.Range;
import provender.engine.source.Basis;
import provender.engine.source.Constants;
import provender.engine.source.Figure;
import provender.engine.source.Step;

class RationTest {
  private static final Constants CONSTANTS = Log.REFERENCE.constants();
  private static final Model USUAL = Model.usual(CONSTANTS);

  private static Ration.Eater eater(double grams, int count, double activity) {
    Step weighed = Step.of("weighed", "", grams, "g", Step.ENTERED);
    return new Ration.Eater(Figure.of(Range.exactly(grams), Basis.MEASURED, weighed), count, activity);
  }

  /** Q10 of exp(0.055 T) is 1.733 (Lupatsch, Kissil & Sklan 2003, seabream maintenance). */
  @Test
  void ten_degrees_warmer_costs_a_factor_of_1_733() {
    assertThat(USUAL.temperatureFactor(30) / USUAL.temperatureFactor(20)).isEqualTo(1.733, offset(0.0005));
    assertThat(USUAL.temperatureFactor(26)).isEqualTo(0.9465, offset(0.00005));
  }

  /** Derived: the display of 3 × 120, 450, 4 × 60 and 600 g at 26 °C with 40 (30 to 70) kJ kg^-0.80. */
  @Test
  void a_display_of_1650_grams_needs_81_92_kilojoules() {
    List<Ration.Eater> display = List.of(eater(120, 3, 1), eater(450, 1, 1), eater(60, 4, 1), eater(600, 1, 1));
    Figure due = Ration.ofAll(display, 26, USUAL);
    assertThat(due.value()).isCloseTo(81.92, withPercentage(0.01));
    assertThat(due.range().low()).isCloseTo(61.44, withPercentage(0.01));
    assertThat(due.range().high()).isCloseTo(143.4, withPercentage(0.05));
    assertThat(due.why()).extracting(Step::what).containsExactly("biomass", "temperatureFactor", "maintenanceAll");
  }

  @Test
  void the_sum_of_the_lines_is_the_table_and_the_middle_is_the_same_without_reasons() {
    Ration.Eater two = eater(120, 2, 1.3);
    assertThat(Ration.of(two, 25, USUAL).value()).isEqualTo(Ration.middle(USUAL.metabolicMass(120) * 2 * 1.3, 25, USUAL).kj(), offset(1e-12));
    assertThat(Ration.ofAll(List.of(two, eater(50, 1, 1)), 25, USUAL).value())
        .isEqualTo(Ration.of(two, 25, USUAL).value() + Ration.of(eater(50, 1, 1), 25, USUAL).value(), offset(1e-9));
  }

  @Test
  void an_assumed_mass_makes_an_assumed_ration_and_a_weighed_one_an_estimate() {
    Step guess = Step.of("assumedLength", "", 10, "cm", Step.PRACTICE);
    Figure assumed = Figure.of(new Range(5, 10, 20), Basis.ASSUMED, guess);
    assertThat(Ration.of(new Ration.Eater(assumed, 1, 1), 26, USUAL).basis()).isEqualTo(Basis.ASSUMED);
    assertThat(Ration.of(eater(10, 1, 1), 26, USUAL).basis()).isEqualTo(Basis.ESTIMATED);
  }

  /** Lupatsch, Kissil & Sklan 2003 for what a gram gained holds; 0.15 to 0.67 of the energy stays (Lupatsch 2013). */
  @Test
  void growth_comes_on_top_of_holding_weight_and_says_so() {
    Range growth = GrowthCost.usualKj(100, new Range(0, 0.1, 0.1), CONSTANTS);
    double held = 4.7 * Math.pow(100, 0.138) * 0.1;
    assertThat(growth.low()).isZero();
    assertThat(growth.value()).isEqualTo(held / 0.67, offset(1e-9));
    assertThat(growth.high()).isEqualTo(held / 0.15, offset(1e-9));
    Ration.Eater still = eater(100, 1, 1);
    Figure growing = Ration.of(new Ration.Eater(still.grams(), 1, 1, growth), 26, USUAL);
    Figure held26 = Ration.of(still, 26, USUAL);
    assertThat(growing.value()).isEqualTo(held26.value() + growth.value(), offset(1e-9));
    assertThat(growing.range().low()).isEqualTo(held26.range().low(), offset(1e-9));
    assertThat(growing.why()).extracting(Step::what).containsExactly("weighed", "maintenance", "growthEnergy");
    assertThat(Ration.ofAll(List.of(new Ration.Eater(still.grams(), 1, 1, growth), still), 26, USUAL).value())
        .isEqualTo(2 * held26.value() + growth.value(), offset(1e-9));
    assertThat(GrowthCost.usualKj(100, Range.ZERO, CONSTANTS)).isEqualTo(Range.ZERO);
  }

  @Property
  void a_heavier_or_warmer_or_busier_fish_needs_more(
      @ForAll @DoubleRange(min = 1, max = 5000) double grams, @ForAll @DoubleRange(min = 20, max = 29.5) double celsius,
      @ForAll @IntRange(min = 1, max = 20) int count) {
    double due = Ration.of(eater(grams, count, 1), celsius, USUAL).value();
    assertThat(Ration.of(eater(grams * 1.01, count, 1), celsius, USUAL).value()).isGreaterThan(due);
    assertThat(Ration.of(eater(grams, count, 1), celsius + 0.5, USUAL).value()).isGreaterThan(due);
    assertThat(Ration.of(eater(grams, count, 1.1), celsius, USUAL).value()).isGreaterThan(due);
    assertThat(Ration.of(eater(grams, count + 1, 1), celsius, USUAL).value()).isGreaterThan(due);
  }

  /** Schiettekatte et al. 2020, Functional Ecology, doi 10.1111/1365-2435.13618: recomputed from its parameters at 27 °C. */
  @ParameterizedTest
  @CsvSource({"10,23.45,0.1190,1.472,0.2613,0.8364,0.7611,3.568", "15,78.49,0.1179,4.778,0.7296,1.660,0.8759,2.115",
      "18,135.1,0.04226,8.140,1.173,2.205,0.5501,1.632"})
  void a_tang_on_turf_eats_for_nitrogen(
      double cm, double grams, double gain, double kj, double byCarbon, double byNitrogen, double byPhosphorus, double percent) {
    TurfGrazer tang = TurfGrazer.of(cm, 27, CONSTANTS);
    assertThat(tang.grams()).isCloseTo(grams, withPercentage(0.1));
    assertThat(tang.gainGrams()).isCloseTo(gain, withPercentage(0.1));
    assertThat(tang.energyKj()).isCloseTo(kj, withPercentage(0.1));
    assertThat(tang.dryByCarbon()).isCloseTo(byCarbon, withPercentage(0.1));
    assertThat(tang.dryByNitrogen()).isCloseTo(byNitrogen, withPercentage(0.1));
    assertThat(tang.dryByPhosphorus()).isCloseTo(byPhosphorus, withPercentage(0.1));
    assertThat(100 * tang.dryGrams() / tang.grams()).isCloseTo(percent, withPercentage(0.1));
    assertThat(tang.limiting()).isEqualTo("nitrogen");
  }

  @Test
  void growth_has_the_price_its_line_gives_it() {
    // Lupatsch et al. 2013: 35.7 kJ gross per gram; seabream 2003: e / 0.67 with e(100 g) = 8.882 kJ/g.
    PublishedModel clownfish = java.util.Objects.requireNonNull(Log.REFERENCE.model("clownfish2013"));
    assertThat(clownfish.cost().kjPerGram(1)).isEqualTo(35.7);
    assertThat(GrowthCost.usual(CONSTANTS).kjPerGram(100)).isCloseTo(8.882 / 0.67, withPercentage(0.1));
    assertThat(Log.REFERENCE.modelKeys()).contains("seabream2003", "seabream1998", "clownfish2013", "barramundi", "resting1999");
  }
}
