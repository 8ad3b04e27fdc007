package provender.engine.fish;

import provender.engine.quantity.Day;

/**
 * One look at a fish's size: a length, a weighed mass, or both; what was not taken is NaN. The length's error is what
 * the keeper stated, NaN when it was read through the glass.
 */
public record Measurement(Day on, double lengthCm, double errorCm, double grams) {

  public static Measurement length(Day on, double cm, double errorCm) {
    return new Measurement(on, cm, errorCm, Double.NaN);
  }

  public static Measurement weighed(Day on, double grams) {
    return new Measurement(on, Double.NaN, Double.NaN, grams);
  }

  public boolean isWeighed() {
    return !Double.isNaN(grams);
  }

  public boolean hasLength() {
    return !Double.isNaN(lengthCm);
  }
}
