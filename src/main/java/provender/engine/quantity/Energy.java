package provender.engine.quantity;

/** Digestible energy in kilojoules, never negative; gross energy only where a name says so. */
public record Energy(double kj) {

  public Energy {
    if (!(kj >= 0) || Double.isInfinite(kj)) {
      throw new IllegalArgumentException("energy below zero or not finite");
    }
  }

  public static Energy ofKj(double kj) {
    return new Energy(kj);
  }
}
