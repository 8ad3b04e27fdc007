package provender.engine.diet;

import provender.engine.fish.Fish;
import provender.engine.food.Component;
import provender.engine.food.Food;
import provender.engine.quantity.Day;

/** What one line of the roster was due and is reckoned to have got, day by day up to today. */
public final class FishDiet {
  /** Stands for a component that was never offered, or never taken, as far back as the review looks. */
  public static final int NEVER = Integer.MIN_VALUE;

  private final Fish fish;
  private final int line;
  private final Ledger ledger;
  private final Day first;
  private final int[] table;
  private int lastTook = NEVER;
  private double appetite = Double.NaN;
  private double growthKj;

  /** @param table by component the last epoch day on which it was on the common table, filled in as the days go by */
  FishDiet(Fish fish, int line, Ledger ledger, Day first, int[] table) {
    this.fish = fish;
    this.line = line;
    this.ledger = ledger;
    this.first = first;
    this.table = table;
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
    ledger.due(line, day, kj);
  }

  /** Handed to it, whether it took it or not. */
  void wasHanded(int day, Food food) {
    ledger.handed(line, first.epochDay() + day, food);
  }

  /** At the end of a day: a component counts as taken when it brought at least {@code fraction} of the day's need. */
  void closeDay(int day, double fraction) {
    int epochDay = first.epochDay() + day;
    if (ledger.close(line, day, epochDay, fraction)) {
      lastTook = epochDay;
    }
  }

  public Fish fish() {
    return fish;
  }

  public double dueKj(int fromDay, int toDay) {
    return ledger.dueKj(line, fromDay, toDay);
  }

  public double gotKj(int fromDay, int toDay) {
    return ledger.gotKj(line, fromDay, toDay);
  }

  public double gotGrams(int fromDay, int toDay) {
    double grams = 0;
    for (int food = 0; food < foods().size(); food++) {
      grams += ledger.grams(line, food, fromDay, toDay);
    }
    return grams;
  }

  /** Dry matter eaten between two days, in grams. */
  double dryGrams(int fromDay, int toDay) {
    return ledger.dryGrams(line, fromDay, toDay);
  }

  /** Dry matter of one food between two days, in grams. */
  double dryGrams(int food, int fromDay, int toDay) {
    return ledger.grams(line, food, fromDay, toDay) * foods().at(food).dryPerGram();
  }

  /** Share of a component in the dry matter eaten between two days, NaN when nothing was eaten. */
  public double share(Component component, int fromDay, int toDay) {
    double total = dryGrams(fromDay, toDay);
    double part = 0;
    for (int food = 0; food < foods().size(); food++) {
      double its = foods().at(food).share(component);
      if (its > 0) {
        part += its * dryGrams(food, fromDay, toDay);
      }
    }
    return total > 0 ? part / total : Double.NaN;
  }

  /** The foods of the days looked back on. */
  Foods foods() {
    return ledger.foods();
  }

  /** Meals between two days at which it ate anything. */
  int meals(int fromDay, int toDay) {
    return ledger.meals(line, fromDay, toDay);
  }

  /** Whether any food it ate between two days brought a supplement. */
  boolean hadWith(String supplement, int fromDay, int toDay) {
    return ledger.hadWith(supplement, line, fromDay, toDay);
  }

  /** The last epoch day on which a component was offered, to it or to the table it eats at, or {@link #NEVER}. */
  public int lastOffered(Component component) {
    int alone = ledger.lastHanded(line, component);
    int atTable = fish.inIsolation() ? NEVER : table[component.ordinal()];
    boolean here = atTable != NEVER && fish.wasHereOn(Day.of(atTable));
    return here ? Math.max(atTable, alone) : alone;
  }

  public int lastTaken(Component component) {
    return ledger.lastTaken(line, component);
  }

  public int lastTook() {
    return lastTook;
  }
}
