package provender.engine.feeder;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.engine.quantity.Day;
import provender.engine.quantity.Moment;
import provender.engine.quantity.Range;

/**
 * One feeder at a tank with its whole history: how it was set, what its drops weighed, when its hopper was filled.
 *
 * @param hopperGrams what the hopper holds when full, NaN where nobody said
 * @param clearGrams the most the fish clear at one time, NaN where nobody said
 * @param share of the dry food that is to come from it
 * @param settings oldest first
 * @param weighings oldest first
 * @param fills oldest first
 */
public record AutoFeeder(
    String key,
    String name,
    double hopperGrams,
    double clearGrams,
    double share,
    List<Setting> settings,
    List<Weighing> weighings,
    List<Fill> fills) {

  /** A part of what is in the hopper, by mass. */
  public record Part(String food, double share) {}

  /** How it was set from a moment on: the minutes of the day at which it drops, how many drops each, and of what. */
  public record Setting(Moment from, boolean running, int[] minutes, int[] drops, List<Part> mix) {

    public int dropsPerDay() {
      int sum = 0;
      for (int count : drops) {
        sum += count;
      }
      return running ? sum : 0;
    }
  }

  /**
   * Drops on the scale.
   *
   * @param level how full the hopper was, where somebody said so: full or low
   */
  public record Weighing(Moment at, Drops drops, String level) {}

  /**
   * A look into the hopper.
   *
   * @param leftGrams what was still in it, NaN when nobody weighed that
   */
  public record Fill(Moment at, double leftGrams, double addedGrams) {}

  /** What fell, or should have fallen, at one time of one day. */
  public record Fall(Moment at, int count, Drops drops, List<Part> mix) {}

  /** The setting in force, null before the first. */
  public @Nullable Setting setting(Moment at) {
    Setting last = null;
    for (Setting setting : settings) {
      if (setting.from().compareTo(at) <= 0) {
        last = setting;
      }
    }
    return last;
  }

  /** The drops as last weighed; before the first weighing, the first. Null when it was never weighed. */
  public @Nullable Weighing weighing(Moment at) {
    Weighing last = null;
    for (Weighing weighing : weighings) {
      if (last == null || weighing.at().compareTo(at) <= 0) {
        last = weighing;
      }
    }
    return last;
  }

  /** Every fall after {@code from} and up to {@code to}, oldest first; none while its drops were never weighed. */
  public List<Fall> falls(Moment from, Moment to) {
    List<Fall> falls = new ArrayList<>();
    for (int day = from.day().epochDay(); day <= to.day().epochDay(); day++) {
      Setting ofDay = setting(new Moment(Day.of(day), LAST_MINUTE, to.offsetMinutes()));
      if (ofDay != null) {
        fallsOf(Day.of(day), ofDay, from, to, falls);
      }
    }
    return falls;
  }

  private static final int LAST_MINUTE = 24 * 60 - 1;

  private void fallsOf(Day day, Setting ofDay, Moment from, Moment to, List<Fall> falls) {
    boolean changedToday = ofDay.from().day().equals(day);
    int[] minutes = changedToday ? minutesOfAllSettings(day) : ofDay.minutes();
    for (int minute : minutes) {
      Moment at = new Moment(day, minute, to.offsetMinutes());
      Setting setting = changedToday ? setting(at) : ofDay;
      Weighing weighing = weighing(at);
      if (at.compareTo(from) > 0 && at.compareTo(to) <= 0 && setting != null && setting.running() && weighing != null) {
        int count = dropsAt(setting, minute);
        if (count > 0) {
          falls.add(new Fall(at, count, weighing.drops(), setting.mix()));
        }
      }
    }
  }

  /** On a day on which it was set anew, the times before and after. */
  private int[] minutesOfAllSettings(Day day) {
    boolean[] any = new boolean[LAST_MINUTE + 1];
    int count = 0;
    for (Setting setting : settings) {
      boolean touchesDay = !day.isBefore(setting.from().day());
      for (int minute : setting.minutes()) {
        if (touchesDay && !any[minute]) {
          any[minute] = true;
          count++;
        }
      }
    }
    int[] minutes = new int[count];
    int next = 0;
    for (int minute = 0; minute <= LAST_MINUTE; minute++) {
      if (any[minute]) {
        minutes[next++] = minute;
      }
    }
    return minutes;
  }

  private static int dropsAt(Setting setting, int minute) {
    for (int i = 0; i < setting.minutes().length; i++) {
      if (setting.minutes()[i] == minute) {
        return setting.drops()[i];
      }
    }
    return 0;
  }

  /** What is in the hopper now: what was in it after the last fill less what fell since; null when it was never filled. */
  public @Nullable Range level(Moment now) {
    if (fills.isEmpty()) {
      return null;
    }
    Range level = after(fills.size() - 1);
    return fallen(fills.get(fills.size() - 1).at(), now, level);
  }

  /** After a fill: what was left and what was put in; where nobody weighed what was left, what should have been. */
  private Range after(int fill) {
    Fill last = fills.get(fill);
    if (!Double.isNaN(last.leftGrams())) {
      return Range.exactly(last.leftGrams() + last.addedGrams());
    }
    if (fill == 0) {
      return Range.exactly(last.addedGrams());
    }
    Range left = fallen(fills.get(fill - 1).at(), last.at(), after(fill - 1));
    double most = Double.isNaN(hopperGrams) ? Double.MAX_VALUE : hopperGrams;
    return Range.around(
        Math.min(most, left.low() + last.addedGrams()),
        Math.min(most, left.value() + last.addedGrams()),
        Math.min(most, left.high() + last.addedGrams()));
  }

  private Range fallen(Moment from, Moment to, Range level) {
    int count = count(from, to);
    Weighing weighing = weighing(to);
    if (count == 0 || weighing == null) {
      return level;
    }
    Range gone = weighing.drops().prediction(count);
    return Range.around(
        Math.max(0, level.low() - gone.high()), Math.max(0, level.value() - gone.value()), Math.max(0, level.high() - gone.low()));
  }

  /** Drops between two moments. */
  public int count(Moment from, Moment to) {
    int count = 0;
    for (Fall fall : falls(from, to)) {
      count += fall.count();
    }
    return count;
  }

  /** What the last look into the hopper says of the time since the one before; null when nobody weighed what was left. */
  public @Nullable Reconciled lastReconciled() {
    return fills.size() < 2 ? null : reconciled(fills.size() - 1);
  }

  /** The same for any fill but the first. */
  public @Nullable Reconciled reconciled(int fill) {
    Fill before = fills.get(fill - 1);
    Fill now = fills.get(fill);
    int count = count(before.at(), now.at());
    Weighing weighing = weighing(now.at());
    if (Double.isNaN(now.leftGrams()) || count == 0 || weighing == null) {
      return null;
    }
    return Reconciled.of(after(fill - 1).value() - now.leftGrams(), count, weighing.drops());
  }

  /** What truly went through at a moment over what the drops say, known once the hopper was looked into; else 1. */
  public double throughput(Moment at) {
    for (int fill = 1; fill < fills.size(); fill++) {
      if (fills.get(fill - 1).at().compareTo(at) < 0 && at.compareTo(fills.get(fill).at()) <= 0) {
        Reconciled found = reconciled(fill);
        return found == null ? 1 : Math.max(0, found.ratio());
      }
    }
    return 1;
  }
}
