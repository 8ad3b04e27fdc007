package provender.engine.diet;

import java.util.ArrayList;
import java.util.List;
import provender.engine.fish.Band;

/**
 * One component of a diet against what a guild needs of it.
 *
 * @param share part of the dry matter, NaN when nothing was eaten
 * @param daysSince days since it was last eaten, NaN when it never was within the window
 */
public record Balance(Band band, double share, double daysSince) {

  /** What is wrong, if anything. */
  public enum Verdict {
    IN_BAND("inBand"),
    TOO_LITTLE("tooLittle"),
    TOO_MUCH("tooMuch"),
    TOO_LONG_AGO("tooLongAgo"),
    NOTHING_EATEN("nothingEaten");

    private final String key;

    Verdict(String key) {
      this.key = key;
    }

    public String key() {
      return key;
    }
  }

  public Verdict verdict(int windowDays) {
    if (Double.isNaN(share)) {
      return Verdict.NOTHING_EATEN;
    }
    double since = Double.isNaN(daysSince) ? windowDays : daysSince;
    if (since > band.gapDays()) {
      return Verdict.TOO_LONG_AGO;
    }
    if (share < band.minShare()) {
      return Verdict.TOO_LITTLE;
    }
    return share > band.maxShare() ? Verdict.TOO_MUCH : Verdict.IN_BAND;
  }

  /** How far outside, from 0 in the middle of what is wanted; heavier findings come first. */
  public double weight(int windowDays) {
    return switch (verdict(windowDays)) {
      case TOO_LONG_AGO -> 2 + (Double.isNaN(daysSince) ? windowDays : daysSince) / Math.max(1, band.gapDays());
      case TOO_LITTLE -> 1 + (band.minShare() - share) / band.minShare();
      case TOO_MUCH -> (share - band.maxShare()) / band.maxShare();
      default -> 0;
    };
  }

  /** The heaviest first. */
  public static List<Balance> ordered(List<Balance> balances, int windowDays) {
    List<Balance> ordered = new ArrayList<>(balances);
    ordered.sort((one, other) -> Double.compare(other.weight(windowDays), one.weight(windowDays)));
    return ordered;
  }
}
