package provender.engine.quantity;

/** A mass in grams, never negative. */
public record Mass(double grams) implements Comparable<Mass> {
  public static final Mass ZERO = new Mass(0);

  public Mass {
    if (!(grams >= 0) || Double.isInfinite(grams)) {
      throw new IllegalArgumentException("mass below zero or not finite");
    }
  }

  public static Mass ofGrams(double grams) {
    return new Mass(grams);
  }

  public double kilograms() {
    return grams / 1000;
  }

  public Mass plus(Mass other) {
    return new Mass(grams + other.grams);
  }

  /** What is left after taking {@code other} away; nothing when there was less. */
  public Mass less(Mass other) {
    return new Mass(Math.max(0, grams - other.grams));
  }

  public Mass times(double factor) {
    return new Mass(grams * factor);
  }

  public boolean isZero() {
    return grams <= 0;
  }

  @Override
  public int compareTo(Mass other) {
    return Double.compare(grams, other.grams);
  }
}
