package provender.engine.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;
import provender.engine.water.ExportFit.Reading;

/** The fit against an independent library, and its interval against tanks whose export is known. */
class ExportFitTest {
  private static final double RATE = 1.2;

  /** A tank with a fifth changed every tenth day, fed the same every day. */
  private static Reading reading(int day) {
    double kept = 1;
    double known = 0;
    double days = 0;
    for (int i = 1; i <= day; i++) {
      known += RATE;
      days += 1;
      if (i % 10 == 0) {
        kept *= 0.8;
        known *= 0.8;
        days *= 0.8;
      }
    }
    return new Reading(kept, known, days);
  }

  private static Reading[] readings(int... on) {
    return IntStream.of(on).mapToObj(ExportFitTest::reading).toArray(Reading[]::new);
  }

  private static double[] tests(Reading[] readings, double start, double export, double scatter, Random random) {
    return java.util.Arrays.stream(readings).mapToDouble(one -> one.expected(start, export) + scatter * random.nextGaussian()).toArray();
  }

  @Test
  void it_is_the_least_squares_of_an_independent_library_with_its_standard_errors() {
    Reading[] readings = readings(0, 6, 13, 19, 27, 34, 41);
    double[] measured = tests(readings, 12, 0.9, 1.5, new Random(3));
    OLSMultipleLinearRegression independent = new OLSMultipleLinearRegression();
    independent.setNoIntercept(true);
    independent.newSampleData(
        IntStream.range(0, measured.length).mapToDouble(i -> measured[i] - readings[i].known()).toArray(),
        java.util.Arrays.stream(readings).map(one -> new double[] {one.kept(), -one.days()}).toArray(double[][]::new));
    ExportFit fit = ExportFit.of(readings, measured, 0.95);
    double[] beta = independent.estimateRegressionParameters();
    double[] errors = independent.estimateRegressionParametersStandardErrors();
    double t = new TDistribution(measured.length - 2).inverseCumulativeProbability(0.975);
    assertThat(fit.start()).isEqualTo(beta[0], offset(1e-9));
    assertThat(fit.export().value()).isEqualTo(beta[1], offset(1e-9));
    assertThat(fit.export().high() - fit.export().value()).isEqualTo(t * errors[1], offset(1e-7));
    assertThat(fit.scatter()).isEqualTo(independent.estimateRegressionStandardError(), offset(1e-9));
    assertThat(fit.tests()).isEqualTo(7);
    double[][] covariance = independent.estimateRegressionParametersVariance();
    double s2 = independent.estimateErrorVariance();
    Reading next = reading(50);
    double[] x = {next.kept(), -next.days()};
    double variance = s2 * (x[0] * x[0] * covariance[0][0] + 2 * x[0] * x[1] * covariance[0][1] + x[1] * x[1] * covariance[1][1]);
    assertThat(fit.level(next).high() - fit.level(next).value()).isEqualTo(t * Math.sqrt(variance), offset(1e-7));
    assertThat(fit.test(next).high() - fit.test(next).value()).isEqualTo(t * Math.sqrt(variance + s2), offset(1e-7));
    double off = t * Math.sqrt(variance + s2);
    assertThat(fit.chance(next, fit.test(next).value() + off)).isEqualTo(0.05, offset(1e-6));
  }

  @Test
  void the_known_export_lies_in_its_95_percent_interval_in_93_to_97_percent_of_tanks() {
    Reading[] readings = readings(0, 7, 14, 21, 28, 35, 42, 49);
    double part = IntStream.range(0, 4_000).filter(run -> {
      var export = ExportFit.of(readings, tests(readings, 20, 0.8, 3, new Random(run)), 0.95).export();
      return export.low() <= 0.8 && 0.8 <= export.high();
    }).count() / 4_000.0;
    assertThat(part).isBetween(0.93, 0.97);
  }

  @Test
  void tests_without_any_scatter_find_the_export_to_the_point() {
    Reading[] readings = readings(0, 10, 20, 30);
    ExportFit fit = ExportFit.of(readings, tests(readings, 20, 0.8, 0, new Random(1)), 0.95);
    assertThat(fit.export().value()).isEqualTo(0.8, offset(1e-9));
    assertThat(fit.chance(reading(40), 99)).isLessThan(1e-6);
  }
}
