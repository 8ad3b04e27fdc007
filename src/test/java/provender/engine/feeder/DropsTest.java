package provender.engine.feeder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.Test;

class DropsTest {
  private static final double[] TEN = {0.52, 0.47, 0.55, 0.49, 0.51, 0.46, 0.53, 0.50, 0.48, 0.54};

  /** Confidence limits for the mean, NIST/SEMATECH e-Handbook; the prediction interval is derived. */
  @Test
  void ten_weighings_give_the_worked_mean_interval_and_predictions() {
    Drops drops = Drops.weighed(TEN, 1, 0.95);
    assertThat(drops.mean()).isEqualTo(0.5050, offset(1e-12));
    assertThat(drops.deviation()).isEqualTo(0.03028, offset(0.000005));
    assertThat(drops.variation()).isEqualTo(0.05995, offset(0.00001));
    assertThat(drops.interval().low()).isEqualTo(0.4833, offset(0.00005));
    assertThat(drops.interval().high()).isEqualTo(0.5267, offset(0.00005));
    assertThat(drops.prediction(1).high() - 0.505).isEqualTo(0.07183, offset(0.00001));
    assertThat(drops.prediction(4).high() - 2.020).isEqualTo(0.1621, offset(0.00005));
    assertThat(drops.prediction(8).value() - drops.prediction(8).low()).isEqualTo(0.2599, offset(0.00005));
  }

  @Test
  void nine_weighings_hold_the_mean_to_five_percent_and_thirty_seven_to_two() {
    Drops drops = Drops.weighed(TEN, 1, 0.95);
    assertThat(drops.weighingsFor(0.05)).isEqualTo(9);
    assertThat(drops.weighingsFor(0.02)).isEqualTo(37);
    assertThat(drops.weighingsFor(1e-9)).isEqualTo(10_000);
  }

  @Test
  void weighing_several_drops_at_once_holds_the_mean_with_fewer_weighings() {
    Drops single = Drops.weighed(TEN, 1, 0.95);
    Drops four = new Drops(10, 4, single.mean(), single.deviation(), 0.95);
    assertThat(four.weighingsFor(0.05)).isLessThan(single.weighingsFor(0.05));
    double perWeighing = four.variation() / 2;
    int n = four.weighingsFor(0.02);
    assertThat(provender.engine.quantity.StudentT.twoSided(0.95, n - 1) * perWeighing / Math.sqrt(n)).isLessThanOrEqualTo(0.02);
    assertThat(provender.engine.quantity.StudentT.twoSided(0.95, n - 2) * perWeighing / Math.sqrt(n - 1)).isGreaterThan(0.02);
  }

  @Test
  void weighing_five_drops_at_once_says_as_much_of_one_drop() {
    Drops five = Drops.weighed(new double[] {2.6, 2.4, 2.55, 2.45}, 5, 0.95);
    assertThat(five.mean()).isEqualTo(0.5, offset(1e-12));
    assertThat(five.deviation()).isEqualTo(Math.sqrt((0.01 + 0.01 + 0.0025 + 0.0025) / 3) / Math.sqrt(5), offset(1e-12));
    assertThat(five.interval().high() - five.mean())
        .isEqualTo(five.t() * five.deviation() / Math.sqrt(20), offset(1e-12));
  }
}
