package provender.engine.feeder;

import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.engine.quantity.StudentT;

/**
 * Drops from a full hopper against drops from a nearly empty one, by Welch's test.
 *
 * @param ratio a drop when nearly empty over one when full
 * @param chance how often two weighings of the same drops would be at least so far apart
 */
public record LevelEffect(double ratio, double chance) {
  static final String FULL = "full";
  static final String LOW = "low";

  /** From the last weighing at each level; null until there is one of both. */
  public static @Nullable LevelEffect of(List<AutoFeeder.Weighing> weighings) {
    Drops full = null;
    Drops low = null;
    for (AutoFeeder.Weighing weighing : weighings) {
      full = weighing.level().equals(FULL) ? weighing.drops() : full;
      low = weighing.level().equals(LOW) ? weighing.drops() : low;
    }
    return full == null || low == null ? null : new LevelEffect(low.mean() / full.mean(), chance(full, low));
  }

  private static double chance(Drops one, Drops other) {
    double a = squaredError(one);
    double b = squaredError(other);
    double sum = a + b;
    double degrees = sum * sum / (a * a / (one.weighings() - 1) + b * b / (other.weighings() - 1));
    double off = Math.abs(one.mean() - other.mean());
    return sum > 0 ? 2 * StudentT.upperTail(off / Math.sqrt(sum), degrees) : off > 0 ? 0 : 1;
  }

  private static double squaredError(Drops drops) {
    return drops.deviation() * drops.deviation() / ((double) drops.weighings() * drops.dropsPerWeighing());
  }
}
