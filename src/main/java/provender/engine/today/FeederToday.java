package provender.engine.today;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.engine.feeder.AutoFeeder;
import provender.engine.feeder.Drops;
import provender.engine.feeder.Hopper;
import provender.engine.feeder.Reconciled;
import provender.engine.quantity.Moment;
import provender.engine.quantity.Range;
import provender.engine.source.Basis;
import provender.engine.source.Figure;
import provender.engine.source.Step;

/**
 * An auto-feeder as it stands.
 *
 * @param setting null before it was ever set
 * @param weighing null before its drops were ever weighed
 * @param level what is in the hopper, in grams; null before it was ever filled
 * @param days until it is empty; null where the level is unknown or nothing falls
 * @param found what the last look into the hopper said of it; null where it said nothing
 */
public record FeederToday(
    AutoFeeder feeder,
    AutoFeeder.@Nullable Setting setting,
    AutoFeeder.@Nullable Weighing weighing,
    @Nullable Range level,
    @Nullable Range days,
    @Nullable Reconciled found,
    double kjPerGram) {

  static List<FeederToday> all(List<AutoFeeder> feeders, Moment now, provender.engine.reference.Reference reference) {
    List<FeederToday> all = new ArrayList<>();
    for (AutoFeeder feeder : feeders) {
      AutoFeeder.Setting setting = feeder.setting(now);
      AutoFeeder.Weighing weighing = feeder.weighing(now);
      Range level = feeder.level(now);
      int perDay = setting == null ? 0 : setting.dropsPerDay();
      Range days = level == null || weighing == null || perDay == 0 ? null : Hopper.days(level, weighing.drops(), perDay);
      all.add(
          new FeederToday(
              feeder, setting, weighing, level, days, feeder.lastReconciled(), Dispensed.kjPerGram(setting, reference)));
    }
    return all;
  }

  /** What a whole day of its present setting brings, in grams; nothing while it stands still or was never weighed. */
  public Figure gramsPerDay() {
    int count = setting == null ? 0 : setting.dropsPerDay();
    if (weighing == null || count == 0) {
      return Figure.of(Range.ZERO, Basis.ASSUMED, Step.of("feederDay", "", 0, "g/d", Step.ENTERED));
    }
    Drops drops = weighing.drops();
    Step step =
        Step.of(
            "feederDay",
            "k m ± t s √(k + k²/n)",
            count * drops.mean(),
            "g/d",
            "nist_mean_interval",
            Step.input("drops", count, ""),
            Step.input("dropMean", drops.mean(), "g"),
            Step.input("deviation", drops.deviation(), "g"),
            Step.input("weighings", drops.weighings(), ""),
            Step.input("t", drops.t(), ""));
    return Figure.of(drops.prediction(count), Basis.ESTIMATED, step);
  }
}
