package provender.engine.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class MealSharesTest {
  private static final double NO_CAP = 1e9;

  /** Derived: four lines weighing by BW^0.80, algae preference 0.7, 0.3, 0.1 and 0.2. */
  @Test
  void algae_go_mostly_to_whoever_prefers_them() {
    double[] weights = {0.5501 * 0.7, 0.5279 * 0.3, 0.4213 * 0.1, 0.6645 * 0.2};
    MealShares split = MealShares.split(1, weights, new double[] {NO_CAP, NO_CAP, NO_CAP, NO_CAP});
    assertThat(new double[] {split.grams(0), split.grams(1), split.grams(2), split.grams(3)})
        .containsExactly(new double[] {0.5360, 0.2204, 0.05863, 0.1850}, offset(0.0001));
  }

  @Test
  void what_a_full_fish_leaves_is_shared_again() {
    MealShares split = MealShares.split(12, new double[] {5, 3, 2}, new double[] {4, 10, 10});
    assertThat(split.grams(0)).isEqualTo(4);
    assertThat(split.grams(1)).isEqualTo(4.8, offset(1e-12));
    assertThat(split.grams(2)).isEqualTo(3.2, offset(1e-12));
    assertThat(split.leftoverGrams()).isZero();
  }

  @Test
  void when_everyone_is_full_the_rest_is_left_over() {
    MealShares split = MealShares.split(20, new double[] {1, 1, 0}, new double[] {4, 2, 9});
    assertThat(split.leftoverGrams()).isEqualTo(14, offset(1e-12));
    assertThat(split.grams(2)).isZero();
  }

  @Test
  void food_that_nobody_wants_is_left_over_whole() {
    assertThat(MealShares.split(5, new double[] {0, 0}, new double[] {4, 4}).leftoverGrams()).isEqualTo(5);
    assertThat(MealShares.split(5, new double[0], new double[0]).leftoverGrams()).isEqualTo(5);
  }

  @Property
  void shares_and_leftovers_add_up_and_nobody_gets_more_than_fits(
      @ForAll @DoubleRange(min = 0, max = 1000) double grams,
      @ForAll @Size(min = 1, max = 12) List<@DoubleRange(min = 0, max = 50) Double> wanted,
      @ForAll @DoubleRange(min = 0, max = 100) double cap) {
    double[] weights = wanted.stream().mapToDouble(Double::doubleValue).toArray();
    double[] caps = new double[weights.length];
    for (int i = 0; i < caps.length; i++) {
      caps[i] = cap * (i + 1) / caps.length;
    }
    MealShares split = MealShares.split(grams, weights, caps);
    double sum = split.leftoverGrams();
    for (int i = 0; i < caps.length; i++) {
      assertThat(split.grams(i)).isBetween(0.0, caps[i] + 1e-9);
      sum += split.grams(i);
    }
    assertThat(sum).isEqualTo(grams, offset(1e-6));
  }
}
