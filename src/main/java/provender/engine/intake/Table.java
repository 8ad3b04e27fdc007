package provender.engine.intake;

import java.util.List;
import provender.engine.fish.Fish;
import provender.engine.food.Food;

/** The fish that eat together; it serves the meals of a day one after another and remembers how full each fish is. */
public final class Table {
  private final List<Fish> fish;
  private final double[] appetites;
  private final double[] roomKj;
  private final Preferences preferences;
  private final double[] weights;
  private final double[] caps;
  private final double[] taken;
  private int meals;

  /** @param preferences of the same fish in the same order */
  public Table(List<Fish> fish, Preferences preferences) {
    this.fish = fish;
    this.preferences = preferences;
    this.appetites = new double[fish.size()];
    this.roomKj = new double[fish.size()];
    this.weights = new double[fish.size()];
    this.caps = new double[fish.size()];
    this.taken = new double[fish.size()];
  }

  /** Another day begins: its meals are counted from one. */
  public void clear() {
    meals = 0;
  }

  /**
   * One line of the roster comes to the table, hungry.
   *
   * @param appetite metabolic mass of the whole line, in kg^0.80; nothing for one that is not here or will not eat
   * @param mostKj the most it can take in a day, in kJ
   */
  public void seat(int line, double appetite, double mostKj) {
    appetites[line] = appetite;
    roomKj[line] = mostKj;
  }

  /** Is told of each helping while it is on the table. */
  public interface Taker {
    void takes(Serving serving);
  }

  /** Who ate what of a meal. A helping handed to one fish is that fish's; refused is refused. */
  public void serve(Meal meal, Taker taker) {
    meals++;
    double eaten = 1 - meal.leftoverFraction();
    for (Helping helping : meal.helpings()) {
      Food food = helping.food();
      if (food != null && helping.grams() > 0 && food.kjPerGram() > 0) {
        if (helping.fish() == null) {
          share(food, helping.grams() * eaten, meal.refusedBy());
        } else {
          hand(helping.grams(), helping.fish(), meal.refusedBy());
        }
        taker.takes(ate(new Serving(meals, helping, food, taken)));
      }
    }
  }

  private void share(Food food, double grams, List<String> refusedBy) {
    double[] liking = preferences.of(food);
    double gramsPerKj = 1 / food.kjPerGram();
    for (int i = 0; i < weights.length; i++) {
      boolean refused = !refusedBy.isEmpty() && refusedBy.contains(fish.get(i).key());
      weights[i] = refused ? 0 : liking[i] * appetites[i];
      caps[i] = roomKj[i] * gramsPerKj;
    }
    MealShares.split(grams, weights, caps, taken);
  }

  private void hand(double grams, String key, List<String> refusedBy) {
    for (int i = 0; i < taken.length; i++) {
      taken[i] = fish.get(i).key().equals(key) && appetites[i] > 0 && !refusedBy.contains(key) ? grams : 0;
    }
  }

  private Serving ate(Serving serving) {
    double kjPerGram = serving.food().kjPerGram();
    for (int i = 0; i < taken.length; i++) {
      roomKj[i] = Math.max(0, roomKj[i] - taken[i] * kjPerGram);
    }
    return serving;
  }
}
