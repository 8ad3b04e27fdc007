package provender.engine.quantity;

/** Digestible energy in kilojoules, never negative; gross energy only where a name says so. */
public record Energy(double kj) implements Comparable<Energy> {
  public static final Energy ZERO = new Energy(0);

  public Energy {
    if (!(kj >= 0) || Double.isInfinite(kj)) {
      throw new IllegalArgumentException("energy below zero or not finite");
    }
  }

  public static Energy ofKj(double kj) {
    return new Energy(kj);
  }

  public Energy plus(Energy other) {
    return new Energy(kj + other.kj);
  }

  /** What is left after taking {@code other} away; nothing when there was less. */
  public Energy less(Energy other) {
    return new Energy(Math.max(0, kj - other.kj));
  }

  public Energy times(double factor) {
    return new Energy(kj * factor);
  }

  @Override
  public int compareTo(Energy other) {
    return Double.compare(kj, other.kj);
  }
}
