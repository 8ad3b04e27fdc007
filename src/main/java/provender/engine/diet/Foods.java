package provender.engine.diet;

import java.util.ArrayList;
import java.util.List;
import provender.engine.food.Food;
import provender.engine.intake.Helping;

/** The foods that were given in the days looked back on, each with a place of its own. */
final class Foods {
  private final List<Food> all = new ArrayList<>();

  Foods(List<DatedMeal> meals) {
    for (DatedMeal meal : meals) {
      for (Helping helping : meal.meal().helpings()) {
        Food food = helping.food();
        if (food != null && !all.contains(food)) {
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

  /** The place of a food that was given; a tank gets few enough to look them through. */
  int of(Food food) {
    return all.indexOf(food);
  }
}
