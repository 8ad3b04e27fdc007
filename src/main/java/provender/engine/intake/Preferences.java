package provender.engine.intake;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import provender.engine.fish.Fish;
import provender.engine.food.Food;

/**
 * How readily each fish at a table takes each food: what its guild likes, moved by what people saw; reckoned once for each
 * food and then remembered.
 */
public final class Preferences {
  private final List<Fish> fish;
  private final double floor;
  private final Sightings sightings;
  private final Map<Food, double[]> byFood = new HashMap<>();

  /** @param floor the least liking of any food */
  public Preferences(List<Fish> fish, double floor, Sightings sightings) {
    this.fish = fish;
    this.floor = floor;
    this.sightings = sightings;
  }

  /** One number for each fish, in their order; not to be changed. */
  double[] of(Food food) {
    double[] known = byFood.get(food);
    if (known == null) {
      known = new double[fish.size()];
      for (int i = 0; i < known.length; i++) {
        Fish one = fish.get(i);
        double liking = one.guild().preference(food, floor) * sightings.liking(one.key(), food.key());
        known[i] = one.inIsolation() ? 0 : liking * one.dominance();
      }
      byFood.put(food, known);
    }
    return known;
  }
}
