package provender.engine.water;

import provender.engine.quantity.Range;
import provender.engine.quantity.StudentT;

/**
 * The tank's own export of one thing, in mg/L a day, as the tests speak of it: ordinary least squares over the level at the
 * beginning and the steady export, everything else being known. The interval is Student's, so that few tests give a wide one.
 */
public final class ExportFit {
  private static final int UNKNOWNS = 2;

  private final double start;
  private final double export;
  private final double scatter;
  private final double[] covariance;
  private final int tests;
  private final double confidence;

  private ExportFit(double start, double export, double scatter, double[] covariance, int tests, double confidence) {
    this.start = start;
    this.export = export;
    this.scatter = scatter;
    this.covariance = covariance;
    this.tests = tests;
    this.confidence = confidence;
  }

  /**
   * What a test would show: {@code start × kept + known − export × days}.
   *
   * @param kept part of the first level that exchanges have left
   * @param known what feeding and new water have brought, less what exchanges took of it
   * @param days of export, each counted by what exchanges have left of its effect
   */
  public record Reading(double kept, double known, double days) {
    double expected(double start, double export) {
      return start * kept + known - export * days;
    }
  }

  /** @param measured one per reading, at least three, on at least two different days */
  public static ExportFit of(Reading[] readings, double[] measured, double confidence) {
    double aa = 0;
    double ab = 0;
    double bb = 0;
    double ay = 0;
    double by = 0;
    for (int i = 0; i < readings.length; i++) {
      double a = readings[i].kept();
      double b = -readings[i].days();
      double y = measured[i] - readings[i].known();
      aa += a * a;
      ab += a * b;
      bb += b * b;
      ay += a * y;
      by += b * y;
    }
    double determinant = aa * bb - ab * ab;
    if (!(determinant > 0)) {
      throw new IllegalArgumentException("tests of one day say nothing of export");
    }
    double start = (bb * ay - ab * by) / determinant;
    double export = (aa * by - ab * ay) / determinant;
    double squares = 0;
    for (int i = 0; i < readings.length; i++) {
      double off = measured[i] - readings[i].expected(start, export);
      squares += off * off;
    }
    double variance = squares / (readings.length - UNKNOWNS);
    double[] covariance = {variance * bb / determinant, -variance * ab / determinant, variance * aa / determinant};
    return new ExportFit(start, export, Math.sqrt(variance), covariance, readings.length, confidence);
  }

  /** Export in mg/L a day; below zero where more came in than the food explains. */
  public Range export() {
    double half = t() * Math.sqrt(covariance[2]);
    return new Range(export - half, export, export + half);
  }

  public double start() {
    return start;
  }

  /** Standard deviation of a test round the line. */
  public double scatter() {
    return scatter;
  }

  public int tests() {
    return tests;
  }

  /** What the water holds at a time, with the interval of the line. */
  public Range level(Reading at) {
    return around(at, 0);
  }

  /** What one more test would show, the test's own scatter counted in. */
  public Range test(Reading at) {
    return around(at, scatter * scatter);
  }

  private Range around(Reading at, double extraVariance) {
    double variance = variance(at) + extraVariance;
    double half = t() * Math.sqrt(variance);
    double level = at.expected(start, export);
    return new Range(level - half, level, level + half);
  }

  /** How often a test would lie at least so far off the line by chance, either way. */
  public double chance(Reading at, double measured) {
    double sd = Math.sqrt(scatter * scatter + variance(at));
    double off = Math.abs(measured - at.expected(start, export));
    return sd > 0 ? 2 * StudentT.upperTail(off / sd, tests - (double) UNKNOWNS) : off > 0 ? 0 : 1;
  }

  private double variance(Reading at) {
    double a = at.kept();
    double b = -at.days();
    return covariance[0] * a * a + 2 * covariance[1] * a * b + covariance[2] * b * b;
  }

  private double t() {
    return StudentT.twoSided(confidence, tests - (double) UNKNOWNS);
  }
}
