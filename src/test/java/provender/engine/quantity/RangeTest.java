package provender.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class RangeTest {
  @Test
  void a_range_that_does_not_hold_its_value_cannot_be_made() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Range(2, 1, 3));
    assertThatIllegalArgumentException().isThrownBy(() -> new Range(1, 4, 3));
    assertThatIllegalArgumentException().isThrownBy(() -> new Range(1, Double.NaN, 3));
  }

  @Test
  void turning_a_range_round_keeps_its_ends_in_order() {
    assertThat(new Range(1, 2, 4).times(-2)).isEqualTo(new Range(-8, -4, -2));
    assertThat(new Range(5, 6, 8).minus(new Range(1, 2, 4))).isEqualTo(new Range(1, 4, 7));
    assertThat(new Range(-1, 0.5, 2).atLeastZero()).isEqualTo(new Range(0, 0.5, 2));
    assertThat(new Range(1, 2, 3).plus(new Range(10, 20, 30))).isEqualTo(new Range(11, 22, 33));
  }

  @Test
  void unrelated_errors_add_up_as_squares() {
    Range sum = new Range(7, 10, 13).plusUnrelated(new Range(6, 10, 14));
    assertThat(sum).isEqualTo(new Range(15, 20, 25));
    // Two factors each known to within a factor of e: together to within e to the root of two.
    Range e = new Range(Math.exp(-1), 1, Math.exp(1));
    assertThat(e.timesUnrelated(e).high()).isEqualTo(Math.exp(Math.sqrt(2)), offset(1e-12));
    assertThat(e.timesUnrelated(e).low()).isEqualTo(Math.exp(-Math.sqrt(2)), offset(1e-12));
  }

  @Test
  void a_factor_that_may_be_nothing_is_multiplied_end_by_end() {
    assertThat(new Range(0, 1, 2).timesUnrelated(new Range(1, 2, 3))).isEqualTo(new Range(0, 2, 6));
  }

  @Property
  void the_middle_of_a_product_is_the_product_of_the_middles_and_lies_inside(
      @ForAll @DoubleRange(min = 0.01, max = 100) double value, @ForAll @DoubleRange(min = 1, max = 4) double spread) {
    Range range = new Range(value / spread, value, value * spread);
    Range product = range.timesUnrelated(new Range(0.5, 1, 2));
    assertThat(product.value()).isEqualTo(value);
    assertThat(product.low()).isLessThanOrEqualTo(range.low() * 1.0000001);
    assertThat(product.high()).isGreaterThanOrEqualTo(range.high() * 0.9999999);
  }
}
