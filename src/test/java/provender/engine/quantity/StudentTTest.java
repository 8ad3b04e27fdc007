package provender.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StudentTTest {
  /** NIST/SEMATECH e-Handbook, critical values of Student's t, upper 0.975; values from memory, three decimals. */
  @ParameterizedTest
  @CsvSource({"1,12.706", "2,4.303", "3,3.182", "4,2.776", "5,2.571", "9,2.262", "10,2.228", "20,2.086", "30,2.042", "60,2.000", "100,1.984"})
  void the_quantiles_are_those_of_the_printed_table(double degrees, double printed) {
    assertThat(StudentT.twoSided(0.95, degrees)).isEqualTo(printed, offset(0.0006));
  }

  @Test
  void they_agree_with_an_independent_library_over_the_whole_reach() {
    for (double degrees : new double[] {1, 2, 3, 5, 9, 17, 40, 120, 1000}) {
      for (double confidence : new double[] {0.5, 0.8, 0.9, 0.95, 0.99, 0.999}) {
        double independent = new TDistribution(degrees).inverseCumulativeProbability((1 + confidence) / 2);
        assertThat(StudentT.twoSided(confidence, degrees)).as(degrees + " " + confidence).isCloseTo(independent, withPercentage(1e-6));
      }
    }
  }

  @Test
  void half_of_the_distribution_lies_on_either_side_of_nothing() {
    assertThat(StudentT.upperTail(0, 7)).isEqualTo(0.5, offset(1e-12));
  }
}
