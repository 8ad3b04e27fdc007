package provender.engine.today;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.engine.feeder.Drops;
import provender.engine.feeder.Portions;
import provender.engine.feeder.Slots;
import provender.engine.quantity.Range;

/**
 * Portions that would make up the dry part of a day's ration, for a person to confirm or not.
 *
 * @param targetKj the dry part
 * @param lines one per feeder that can be reckoned with
 * @param bringsKj what they would really bring
 */
public record Proposal(double targetKj, List<Line> lines, Range bringsKj) {
  private static final int MOST_DROPS = 200;

  /** Drops at each of the times the feeder is set to. */
  public record Line(String feeder, int[] minutes, int[] drops, Range grams) {}

  /** Null where no feeder has times, weighed drops and food of known energy. */
  static @Nullable Proposal of(List<FeederToday> feeders, double targetKj) {
    List<FeederToday> able = new ArrayList<>();
    List<Portions.Dispenser> dispensers = new ArrayList<>();
    for (FeederToday one : feeders) {
      if (one.weighing() != null && one.setting() != null && one.setting().minutes().length > 0 && one.kjPerGram() > 0) {
        Drops drops = one.weighing().drops();
        double clear = one.feeder().clearGrams();
        int most = Double.isNaN(clear) ? MOST_DROPS : drops.mostWithin(clear, MOST_DROPS);
        able.add(one);
        dispensers.add(
            new Portions.Dispenser(
                drops.times(one.kjPerGram()), one.feeder().share(), Slots.Bounds.alike(one.setting().minutes().length, 0, most)));
      }
    }
    return able.isEmpty() ? null : of(able, Portions.of(targetKj, dispensers), targetKj);
  }

  private static Proposal of(List<FeederToday> able, Portions portions, double targetKj) {
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < able.size(); i++) {
      FeederToday one = able.get(i);
      if (one.setting() != null && one.weighing() != null) {
        int all = portions.drops(i);
        Range grams = all > 0 ? one.weighing().drops().prediction(all) : Range.ZERO;
        lines.add(new Line(one.feeder().key(), one.setting().minutes(), portions.atEachTime(i), grams));
      }
    }
    return new Proposal(targetKj, lines, portions.expectedGrams());
  }
}
