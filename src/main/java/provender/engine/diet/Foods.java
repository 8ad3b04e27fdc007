package provender.engine.diet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import provender.engine.food.Food;
import provender.engine.intake.Helping;

/** The foods that were given in the days looked back on, each with a place of its own. */
final class Foods {
  private final List<Food> all = new ArrayList<>();
  private final Map<Food, Integer> places = new HashMap<>();

  Foods(List<DatedMeal> meals) {
    for (DatedMeal meal : meals) {
      for (Helping helping : meal.meal().helpings()) {
        Food food = helping.food();
        if (food != null && !places.containsKey(food)) {
          places.put(food, all.size());
          all.add(food);
        }
      }
    }
  }

  int size() {
    return all.size();
  }

  Food at(int place) {
    return all.get(place);
  }

  /** The place of a food that was given. */
  int of(Food food) {
    Integer place = places.get(food);
    if (place == null) {
      throw new IllegalArgumentException("never given: " + food.key());
    }
    return place;
  }
}
