package provender.engine.feeder;

import provender.engine.quantity.Range;
import provender.engine.quantity.StudentT;

/**
 * The drops of an auto-feeder as the scale saw them.
 *
 * @param weighings how many weighings there were
 * @param dropsPerWeighing how many drops lay on the scale each time, taken as independent of each other
 * @param mean grams per drop
 * @param deviation standard deviation of one drop, in grams
 */
public record Drops(int weighings, int dropsPerWeighing, double mean, double deviation, double confidence) {
  private static final int MOST_NEEDED = 10_000;

  /** @param grams one number per weighing, at least two */
  public static Drops weighed(double[] grams, int dropsPerWeighing, double confidence) {
    double sum = 0;
    for (double weighing : grams) {
      sum += weighing;
    }
    double mean = sum / grams.length;
    double squares = 0;
    for (double weighing : grams) {
      squares += (weighing - mean) * (weighing - mean);
    }
    double ofWeighings = Math.sqrt(squares / (grams.length - 1));
    return new Drops(
        grams.length, dropsPerWeighing, mean / dropsPerWeighing, ofWeighings / Math.sqrt(dropsPerWeighing), confidence);
  }

  /** The same drops in another unit, such as the energy they bring. */
  public Drops times(double factor) {
    return new Drops(weighings, dropsPerWeighing, mean * factor, deviation * factor, confidence);
  }

  public double variation() {
    return deviation / mean;
  }

  public double t() {
    return StudentT.twoSided(confidence, weighings - 1.0);
  }

  /** The mean drop with its confidence interval, m ± t s / √n over all drops weighed. */
  public Range interval() {
    double half = t() * deviation / Math.sqrt((double) weighings * dropsPerWeighing);
    return new Range(mean - half, mean, mean + half);
  }

  /** What the next {@code k} drops together will weigh, k m ± t s √(k + k²/n). */
  public Range prediction(double k) {
    double calibrated = (double) weighings * dropsPerWeighing;
    double half = t() * deviation * Math.sqrt(k + k * k / calibrated);
    return new Range(k * mean - half, k * mean, k * mean + half);
  }

  /** The most drops, up to {@code most}, of which even a heavy fall stays within so many grams. */
  public int mostWithin(double grams, int most) {
    int count = (int) Math.min(most, Math.floor(grams / mean));
    while (count > 0 && prediction(count).high() > grams) {
      count--;
    }
    return count;
  }

  /** How many weighings hold the mean to within a part of itself: the smallest n with t s / √n ≤ part × m. */
  public int weighingsFor(double part) {
    double perWeighing = variation() / Math.sqrt(dropsPerWeighing);
    for (int n = 2; n < MOST_NEEDED; n++) {
      if (StudentT.twoSided(confidence, n - 1.0) * perWeighing / Math.sqrt(n) <= part) {
        return n;
      }
    }
    return MOST_NEEDED;
  }
}
