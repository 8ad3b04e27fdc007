package provender.engine.diet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import provender.engine.fish.Fish;
import provender.engine.food.Component;
import provender.engine.intake.Table.Share;
import provender.engine.quantity.Day;

/** What one line of the roster was due and is reckoned to have got, day by day up to today. */
public final class FishDiet {
  /** Stands for a component that was never offered, or never taken, as far back as the review looks. */
  public static final int NEVER = Integer.MIN_VALUE;

  /** Single shares are remembered as far back as the longest window of a rule, with some days to spare. */
  static final int KEPT_DAYS = 40;

  private static final int COMPONENTS = Component.values().length;

  private final Fish fish;
  private final Day first;
  private final double[] dueKj;
  private final double[] gotKj;
  private final double[] gotGrams;
  /** By day and component, one long row for speed. */
  private final double[] dryGrams;

  /** Of the day that is being eaten. */
  private final double[] componentKj = new double[COMPONENTS];

  private final double[] dryTotal;
  private final int[] offered = new int[COMPONENTS];
  private final int[] taken = new int[COMPONENTS];
  private final List<List<Share>> shares = new ArrayList<>();
  private int lastTook = NEVER;
  private double grams = Double.NaN;

  FishDiet(Fish fish, Day first, int days) {
    this.fish = fish;
    this.first = first;
    this.dueKj = new double[days];
    this.gotKj = new double[days];
    this.gotGrams = new double[days];
    this.dryTotal = new double[days];
    this.dryGrams = new double[days * COMPONENTS];
    for (int day = 0; day < days; day++) {
      shares.add(new ArrayList<>());
    }
    Arrays.fill(offered, NEVER);
    Arrays.fill(taken, NEVER);
  }

  /** The mass of one fish of the line, kept from day to day until it is measured again. */
  void weighs(double each) {
    grams = each;
  }

  boolean needsWeighing() {
    return Double.isNaN(grams);
  }

  double grams() {
    return grams;
  }

  void due(int day, double kj) {
    dueKj[day] = kj;
  }

  void wasOffered(int day, Component component) {
    offered[component.ordinal()] = first.plus(day).epochDay();
  }

  void ate(int day, Share share) {
    if (day >= dueKj.length - KEPT_DAYS) {
      shares.get(day).add(share);
    }
    gotKj[day] += share.kj();
    gotGrams[day] += share.grams();
    double dry = share.grams() * share.food().dryPerGram();
    dryTotal[day] += dry;
    for (Component component : share.food().brings()) {
      double part = share.food().share(component);
      dryGrams[day * COMPONENTS + component.ordinal()] += dry * part;
      componentKj[component.ordinal()] += share.kj() * part;
    }
  }

  /** At the end of a day: a component counts as taken when it brought at least {@code fraction} of the day's need. */
  void closeDay(int day, double fraction) {
    for (int c = 0; c < COMPONENTS; c++) {
      double kj = componentKj[c];
      if (kj > 0 && kj >= dueKj[day] * fraction) {
        taken[c] = first.plus(day).epochDay();
      }
      componentKj[c] = 0;
    }
    if (gotKj[day] > 0) {
      lastTook = first.plus(day).epochDay();
    }
  }

  public Fish fish() {
    return fish;
  }

  public double dueKj(int fromDay, int toDay) {
    return sum(dueKj, fromDay, toDay);
  }

  public double gotKj(int fromDay, int toDay) {
    return sum(gotKj, fromDay, toDay);
  }

  public double gotGrams(int fromDay, int toDay) {
    return sum(gotGrams, fromDay, toDay);
  }

  /** Dry matter eaten between two days, in grams. */
  double dryGrams(int fromDay, int toDay) {
    return sum(dryTotal, fromDay, toDay);
  }

  /** Share of a component in the dry matter eaten between two days, NaN when nothing was eaten. */
  public double share(Component component, int fromDay, int toDay) {
    double total = sum(dryTotal, fromDay, toDay);
    double part = 0;
    for (int day = fromDay; day < toDay; day++) {
      part += dryGrams[day * COMPONENTS + component.ordinal()];
    }
    return total > 0 ? part / total : Double.NaN;
  }

  /** What it is reckoned to have eaten on one day. */
  List<Share> shares(int day) {
    return shares.get(day);
  }

  /** The last epoch day on which a component was offered, or {@link #NEVER}. */
  public int lastOffered(Component component) {
    return offered[component.ordinal()];
  }

  public int lastTaken(Component component) {
    return taken[component.ordinal()];
  }

  public int lastTook() {
    return lastTook;
  }

  private static double sum(double[] values, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += values[i];
    }
    return sum;
  }
}
