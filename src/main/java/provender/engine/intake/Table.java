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
  public List<Serving> serve(Meal meal) {
    List<Serving> servings = new ArrayList<>(meal.helpings().size());
    meals++;
    double eaten = 1 - meal.leftoverFraction();
    for (Helping helping : meal.helpings()) {
      Food food = helping.food();
      if (food != null && helping.grams() > 0 && food.kjPerGram() > 0) {
        double[] grams =
            helping.fish() == null
                ? share(food, helping.grams() * eaten, meal.refusedBy())
                : hand(helping.grams(), helping.fish(), meal.refusedBy());
        servings.add(ate(new Serving(meals, helping, food, grams)));
      }
    }
    return servings;
  }

  private double[] share(Food food, double grams, List<String> refusedBy) {
    double[] liking = preferences.of(food);
    double gramsPerKj = 1 / food.kjPerGram();
    for (int i = 0; i < weights.length; i++) {
      Eater eater = eaters.get(i);
      boolean refused = !refusedBy.isEmpty() && refusedBy.contains(eater.fish().key());
      weights[i] = refused ? 0 : liking[i] * eater.appetite();
      caps[i] = roomKj[i] * gramsPerKj;
    }
    return MealShares.split(grams, weights, caps).grams();
  }

  private double[] hand(double grams, String key, List<String> refusedBy) {
    double[] taken = new double[weights.length];
    for (int i = 0; i < taken.length; i++) {
      if (eaters.get(i).fish().key().equals(key) && !refusedBy.contains(key)) {
        taken[i] = grams;
      }
    }
    return taken;
  }

  private Serving ate(Serving serving) {
    for (int i = 0; i < roomKj.length; i++) {
      roomKj[i] = Math.max(0, roomKj[i] - serving.kj(i));
    }
    return serving;
  }
}
