package provender.engine.feeder;

import java.util.List;
import provender.engine.quantity.Range;

/**
 * The whole drops of several feeders that together come closest to a day's dry food. The measure, to be made small: the
 * square of what the total is off, and the squares of what each feeder is off its share. The best is found exactly, by trying
 * the counts near each share and giving up a branch as soon as it is worse than the best known.
 */
public final class Portions {
  private final List<Dispenser> feeders;
  private final double target;
  private final double[] shares;
  private final int[] trial;
  private int[] best;
  private double least;

  /**
   * One feeder as it is asked for drops.
   *
   * @param share of the dry food that is to come from it
   */
  public record Dispenser(Drops drops, double share, Slots.Bounds bounds) {}

  private Portions(double target, List<Dispenser> feeders) {
    this.target = target;
    this.feeders = feeders;
    this.shares = shares(feeders);
    this.trial = new int[feeders.size()];
    this.best = nearest();
    this.least = badness(best);
    search(0, 0, 0);
  }

  /** @param target grams of dry food a day */
  public static Portions of(double target, List<Dispenser> feeders) {
    return new Portions(target, feeders);
  }

  /** Drops of each feeder in a day. */
  public int drops(int feeder) {
    return best[feeder];
  }

  /** Drops of one feeder at each of its times. */
  public int[] atEachTime(int feeder) {
    return Slots.evenly(best[feeder], feeders.get(feeder).bounds());
  }

  /** What a day will really bring, in grams; the feeders' errors have nothing to do with each other. */
  public Range expectedGrams() {
    Range sum = Range.ZERO;
    for (int i = 0; i < best.length; i++) {
      if (best[i] > 0) {
        sum = sum.plusUnrelated(feeders.get(i).drops().prediction(best[i]));
      }
    }
    return sum;
  }

  /** The measure of the portions found. */
  public double badness() {
    return least;
  }

  private static double[] shares(List<Dispenser> feeders) {
    double sum = 0;
    for (Dispenser feeder : feeders) {
      sum += feeder.share();
    }
    double[] shares = new double[feeders.size()];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = sum > 0 ? feeders.get(i).share() / sum : 1.0 / shares.length;
    }
    return shares;
  }

  private int[] nearest() {
    int[] near = new int[feeders.size()];
    for (int i = 0; i < near.length; i++) {
      near[i] = within(i, Math.floor(shares[i] * target / mean(i) + 0.5));
    }
    return near;
  }

  private double badness(int[] drops) {
    double total = -target;
    double sum = 0;
    for (int i = 0; i < drops.length; i++) {
      total += drops[i] * mean(i);
      sum += off(i, drops[i]);
    }
    return total * total + sum;
  }

  private double off(int feeder, int drops) {
    double off = drops * mean(feeder) - shares[feeder] * target;
    return off * off;
  }

  private void search(int feeder, double off, double grams) {
    if (feeder == trial.length) {
      double total = grams - target;
      if (total * total + off < least) {
        least = total * total + off;
        best = trial.clone();
      }
      return;
    }
    // What a single feeder may be off its share without being worse already.
    double reach = Math.sqrt(Math.max(0, least - off));
    double middle = shares[feeder] * target;
    int from = within(feeder, Math.ceil((middle - reach) / mean(feeder)));
    int to = within(feeder, Math.floor((middle + reach) / mean(feeder)));
    for (int drops = from; drops <= to; drops++) {
      trial[feeder] = drops;
      double sum = off(feeder, drops) + off;
      if (sum < least) {
        search(feeder + 1, sum, drops * mean(feeder) + grams);
      }
    }
  }

  private int within(int feeder, double drops) {
    Slots.Bounds bounds = feeders.get(feeder).bounds();
    return (int) Math.max(bounds.atLeast(), Math.min(bounds.atMost(), drops));
  }

  private double mean(int feeder) {
    return feeders.get(feeder).drops().mean();
  }
}
