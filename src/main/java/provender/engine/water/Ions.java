package provender.engine.water;

import provender.engine.source.Constant;
import provender.engine.source.Constants;

/** Masses of what water tests measure over the masses of the elements in them, from the atomic masses. */
public record Ions(double c, double n, double o, double p, double ca) {

  public static Ions of(Constants constants) {
    return new Ions(
        constants.value(Constant.ATOMIC_C),
        constants.value(Constant.ATOMIC_N),
        constants.value(Constant.ATOMIC_O),
        constants.value(Constant.ATOMIC_P),
        constants.value(Constant.ATOMIC_CA));
  }

  /** NO3 over N. */
  public double nitratePerNitrogen() {
    return (o * 3 + n) / n;
  }

  /** PO4 over P. */
  public double phosphatePerPhosphorus() {
    return (o * 4 + p) / p;
  }

  /** CaCO3 that nitrifying one gram of ammonia nitrogen uses up: two equivalents. */
  public double carbonatePerNitrogen() {
    return 2 * carbonateEquivalent() / n;
  }

  /** Oxygen that nitrifying one gram of ammonia nitrogen takes: two molecules. */
  public double oxygenPerNitrogen() {
    return o * 4 / n;
  }

  /** Grams of CaCO3 in one equivalent. */
  public double carbonateEquivalent() {
    return (o * 3 + c + ca) / 2;
  }
}
