package provender.engine.feeder;

import provender.engine.quantity.Range;

/** How long what is in a hopper lasts. */
public final class Hopper {
  private static final int STEPS = 100;

  private Hopper() {}

  /**
   * Days until it is empty: as expected, and with the bounds that the spread of its drops leaves.
   *
   * @param grams what is in it, with the error that is known of
   * @param dropsPerDay above zero
   */
  public static Range days(Range grams, Drops drops, double dropsPerDay) {
    double expected = grams.value() / drops.mean() / dropsPerDay;
    double low = dropsUntil(grams.low(), drops, true) / dropsPerDay;
    double high = dropsUntil(grams.high(), drops, false) / dropsPerDay;
    return Range.around(low, expected, high);
  }

  /** Drops after which so many grams may (heavy drops) or must (light drops) be gone: where the prediction meets them. */
  private static double dropsUntil(double grams, Drops drops, boolean heavy) {
    double low = 0;
    double high = Math.max(1, grams / drops.mean());
    while (!reached(high, grams, drops, heavy) && high < 1e9) {
      high *= 2;
    }
    for (int i = 0; i < STEPS; i++) {
      double middle = (low + high) / 2;
      if (reached(middle, grams, drops, heavy)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return low;
  }

  private static boolean reached(double count, double grams, Drops drops, boolean heavy) {
    Range fallen = drops.prediction(count);
    return (heavy ? fallen.high() : fallen.low()) >= grams;
  }
}
