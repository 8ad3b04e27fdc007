package provender.engine.diet;

import java.util.Arrays;
import java.util.List;
import provender.engine.fish.Fish;
import provender.engine.food.Component;
import provender.engine.food.Food;
import provender.engine.intake.Serving;
import provender.engine.quantity.Day;

/** What one line of the roster was due and is reckoned to have got, day by day up to today. */
public final class FishDiet {
  /** Stands for a component that was never offered, or never taken, as far back as the review looks. */
  public static final int NEVER = Integer.MIN_VALUE;

  private static final int COMPONENTS = Component.values().length;

  private final Fish fish;
  private final Day first;
  private final double[] dueKj;
  private final double[] gotKj;
  private final double[] gotGrams;
  /** By food, of the day that is being eaten. */
  private final double[] todayDry;

  private final double[] todayKj;
  private final double[] componentKj = new double[COMPONENTS];

  private final double[] dryTotal;
  private final int[] table;
  private final int[] offered = new int[COMPONENTS];
  private final int[] taken = new int[COMPONENTS];
  private final Foods foods;
  private final Eaten eaten;
  private int lastMeal = -1;
  private int lastTook = NEVER;
  private double appetite = Double.NaN;
  private double growthKj;

  /** @param table by component the last epoch day on which it was on the common table, filled in as the days go by */
  FishDiet(Fish fish, Day first, int days, Foods foods, int[] table) {
    this.table = table;
    this.fish = fish;
    this.first = first;
    this.foods = foods;
    this.eaten = new Eaten(foods.size(), days);
    this.todayDry = new double[foods.size()];
    this.todayKj = new double[foods.size()];
    this.dueKj = new double[days];
    this.gotKj = new double[days];
    this.gotGrams = new double[days];
    this.dryTotal = new double[days];
    Arrays.fill(offered, NEVER);
    Arrays.fill(taken, NEVER);
  }

  /** The whole line's metabolic mass and what its growth costs in a day, kept until it is measured again. */
  void weighs(double metabolicMass, double growthKj) {
    this.appetite = metabolicMass;
    this.growthKj = growthKj;
  }

  double growthKj() {
    return growthKj;
  }

  boolean needsWeighing() {
    return Double.isNaN(appetite);
  }

  double appetite() {
    return appetite;
  }

  void due(int day, double kj) {
    dueKj[day] = kj;
  }

  /** Handed to it, whether it took it or not. */
  void wasHanded(int day, Food food) {
    for (Component component : food.brings()) {
      offered[component.ordinal()] = first.plus(day).epochDay();
    }
  }

  /** @param food its place among {@link Foods} */
  void ate(int day, int food, Serving serving, int eater) {
    double kj = serving.kj(eater);
    double grams = serving.gramsEaten()[eater];
    gotKj[day] += kj;
    gotGrams[day] += grams;
    todayKj[food] += kj;
    todayDry[food] += grams * serving.food().dryPerGram();
    if (serving.meal() != lastMeal) {
      lastMeal = serving.meal();
      eaten.atMeal(day);
    }
    List<String> supplements = serving.helping().supplements();
    if (!supplements.isEmpty()) {
      eaten.broughtAll(day, supplements);
    }
  }

  /** At the end of a day: a component counts as taken when it brought at least {@code fraction} of the day's need. */
  void closeDay(int day, double fraction) {
    if (gotKj[day] <= 0) {
      return;
    }
    for (int food = 0; food < todayDry.length; food++) {
      if (todayKj[food] > 0) {
        digest(day, food);
      }
    }
    for (int food = 0; food < todayDry.length; food++) {
      if (todayKj[food] > 0) {
        taste(day, foods.at(food), fraction);
        todayDry[food] = 0;
        todayKj[food] = 0;
      }
    }
    lastTook = first.plus(day).epochDay();
    lastMeal = -1;
  }

  private void digest(int day, int place) {
    Food food = foods.at(place);
    dryTotal[day] += todayDry[place];
    eaten.took(day, place, todayDry[place]);
    for (Component component : food.brings()) {
      componentKj[component.ordinal()] += todayKj[place] * food.share(component);
    }
  }

  /** After all foods of the day are added up; what another food brought too is looked at once. */
  private void taste(int day, Food food, double fraction) {
    for (Component component : food.brings()) {
      int c = component.ordinal();
      if (componentKj[c] > 0 && componentKj[c] >= dueKj[day] * fraction) {
        taken[c] = first.plus(day).epochDay();
      }
      componentKj[c] = 0;
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
    for (int food = 0; food < foods.size(); food++) {
      double its = foods.at(food).share(component);
      if (its > 0) {
        part += its * eaten.dryGrams(food, fromDay, toDay);
      }
    }
    return total > 0 ? part / total : Double.NaN;
  }

  /** What it ate of each food. */
  Eaten eaten() {
    return eaten;
  }

  Foods foods() {
    return foods;
  }

  /** The last epoch day on which a component was offered, to it or to the table it eats at, or {@link #NEVER}. */
  public int lastOffered(Component component) {
    int atTable = fish.inIsolation() ? NEVER : table[component.ordinal()];
    boolean here = atTable != NEVER && fish.wasHereOn(Day.of(atTable));
    return here ? Math.max(atTable, offered[component.ordinal()]) : offered[component.ordinal()];
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
