package provender.engine.fish;

import provender.engine.quantity.Range;

/**
 * The mass of a fish from its length, W = a L^b, with L in cm and W in g; {@code lengthType} says how L is measured. The
 * scatter is the band round the relation as a factor: 1 ± 0.40 for a table, narrower where real fish were fitted.
 */
public record LengthWeight(double a, double b, String lengthType, Range scatter, String source) {

  public double grams(double lengthCm) {
    return a * Math.pow(lengthCm, b);
  }

  /** The length that goes with a mass. */
  public double lengthCm(double grams) {
    return Math.pow(grams / a, 1 / b);
  }

  /** The exact form a(L ± e)^b: lowest, middle and highest mass when the length is off by {@code errorCm}. */
  public Range grams(double lengthCm, double errorCm) {
    return Range.around(grams(Math.max(0, lengthCm - errorCm)), grams(lengthCm), grams(lengthCm + errorCm));
  }
}
