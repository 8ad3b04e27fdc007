package provender.engine.feeder;

import provender.engine.quantity.Range;
import provender.engine.quantity.StudentT;

/**
 * What left a hopper between two looks into it, against what the drops should have taken.
 *
 * @param expected grams, as the weighed drops predict them
 * @param used grams that are gone
 * @param chance how often drops as weighed would be off at least that far, either way
 */
public record Reconciled(Range expected, double used, double chance) {

  /** What the difference speaks for. */
  public enum Verdict {
    AS_EXPECTED("asExpected"),
    /** Far less than expected: something holds the food back. */
    JAM("jam"),
    /** More or less than the drops explain: they no longer weigh what they did. */
    DRIFT("drift");

    private final String key;

    Verdict(String key) {
      this.key = key;
    }

    public String key() {
      return key;
    }
  }

  public static Reconciled of(double used, double count, Drops drops) {
    double mean = count * drops.mean();
    double weighed = (double) drops.weighings() * drops.dropsPerWeighing();
    double sd = drops.deviation() * Math.sqrt(count + count * count / weighed);
    double t = sd > 0 ? Math.abs(used - mean) / sd : Double.POSITIVE_INFINITY;
    double chance = used == mean ? 1 : Double.isInfinite(t) ? 0 : 2 * StudentT.upperTail(t, drops.weighings() - 1.0);
    return new Reconciled(drops.prediction(count), used, chance);
  }

  public double ratio() {
    return used / expected.value();
  }

  /**
   * @param alarm the chance below which a difference is not put down to the drops' own spread
   * @param jam used over expected below which it is not drift any more
   */
  public Verdict verdict(double alarm, double jam) {
    if (chance >= alarm) {
      return Verdict.AS_EXPECTED;
    }
    return ratio() < jam ? Verdict.JAM : Verdict.DRIFT;
  }
}
