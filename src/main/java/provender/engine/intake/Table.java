package provender.engine.intake;

import java.util.ArrayList;
import java.util.List;
import provender.engine.fish.Fish;
import provender.engine.food.Food;

/** The fish that eat together on one day; it serves meals one after another and remembers how full each fish is. */
public final class Table {
  private final List<Eater> eaters;
  private final double[] roomKj;
  private final Preferences preferences;
  private final double[] weights;
  private final double[] caps;
  private int meals;

  /**
   * One line of the roster at the table.
   *
   * @param appetite metabolic mass of the whole line, in kg^0.80
   * @param mostKj the most it can take in a day, in kJ
   */
  public record Eater(Fish fish, double appetite, double mostKj) {}

  /** The part of one helping that one line of the roster is reckoned to have eaten, at which meal of the day. */
  public record Share(int eater, int meal, Helping helping, Food food, double grams, double kj) {}

  /** @param preferences of the same fish in the same order */
  public Table(List<Eater> eaters, Preferences preferences) {
    this.eaters = eaters;
    this.preferences = preferences;
    this.weights = new double[eaters.size()];
    this.caps = new double[eaters.size()];
    this.roomKj = new double[eaters.size()];
    for (int i = 0; i < roomKj.length; i++) {
      roomKj[i] = eaters.get(i).mostKj();
    }
  }

  /** Who ate what of a meal. A helping handed to one fish is that fish's; refused is refused. */
  public List<Share> serve(Meal meal) {
    List<Share> shares = new ArrayList<>();
    meals++;
    double eaten = 1 - meal.leftoverFraction();
    for (Helping helping : meal.helpings()) {
      Food food = helping.food();
      if (food != null && helping.grams() > 0 && food.kjPerGram() > 0) {
        if (helping.fish() == null) {
          share(helping, food, helping.grams() * eaten, meal.refusedBy(), shares);
        } else {
          hand(helping, food, helping.fish(), meal.refusedBy(), shares);
        }
      }
    }
    return shares;
  }

  private void share(Helping helping, Food food, double grams, List<String> refusedBy, List<Share> shares) {
    double[] liking = preferences.of(food);
    double gramsPerKj = 1 / food.kjPerGram();
    for (int i = 0; i < weights.length; i++) {
      Eater eater = eaters.get(i);
      boolean refused = !refusedBy.isEmpty() && refusedBy.contains(eater.fish().key());
      weights[i] = refused ? 0 : liking[i] * eater.appetite();
      caps[i] = roomKj[i] * gramsPerKj;
    }
    MealShares split = MealShares.split(grams, weights, caps);
    for (int i = 0; i < weights.length; i++) {
      if (split.grams(i) > 0) {
        shares.add(ate(i, helping, food, split.grams(i)));
      }
    }
  }

  private void hand(Helping helping, Food food, String key, List<String> refusedBy, List<Share> shares) {
    for (int i = 0; i < eaters.size(); i++) {
      if (eaters.get(i).fish().key().equals(key) && !refusedBy.contains(key)) {
        shares.add(ate(i, helping, food, helping.grams()));
      }
    }
  }

  private Share ate(int eater, Helping helping, Food food, double grams) {
    double kj = grams * food.kjPerGram();
    roomKj[eater] = Math.max(0, roomKj[eater] - kj);
    return new Share(eater, meals, helping, food, grams, kj);
  }
}
