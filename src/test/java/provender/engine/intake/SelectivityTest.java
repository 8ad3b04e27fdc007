package provender.engine.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.Test;

class SelectivityTest {
  /** Lechowicz 1982, Oecologia 52:22-30: r = 0.6, 0.3, 0.1 from p = 0.2, 0.3, 0.5. */
  @Test
  void the_indices_are_those_of_the_review() {
    Selectivity chosen = Selectivity.of(new double[] {20, 30, 50}, new double[] {6, 3, 1});
    assertThat(chosen.ivlev()).containsExactly(new double[] {0.5, 0, -0.6667}, offset(0.0001));
    assertThat(chosen.jacobs()).containsExactly(new double[] {0.7143, 0, -0.8}, offset(0.0001));
    assertThat(chosen.manly()).containsExactly(new double[] {0.7143, 0.2381, 0.04762}, offset(0.0001));
    assertThat(chosen.scavia()).containsExactly(new double[] {0.3636, -0.1667, -0.75}, offset(0.0001));
  }

  @Test
  void a_food_eaten_to_the_last_crumb_is_preferred_and_not_infinite() {
    Selectivity chosen = Selectivity.of(new double[] {10, 10}, new double[] {10, 5});
    assertThat(chosen.manlyDepleted()[0]).isBetween(0.9, 1.0);
    assertThat(chosen.manlyDepleted()[0] + chosen.manlyDepleted()[1]).isEqualTo(1, offset(1e-12));
  }
}
