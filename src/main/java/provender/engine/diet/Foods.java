package provender.engine.diet;

import java.util.ArrayList;
import java.util.List;
import provender.engine.food.Food;
import provender.engine.intake.Helping;

/** The foods that were given in the days looked back on, each with a place of its own. */
final class Foods {
  private final Food[] all;

  Foods(List<DatedMeal> meals) {
    List<Food> found = new ArrayList<>();
    for (DatedMeal meal : meals) {
      for (Helping helping : meal.meal().helpings()) {
        Food food = helping.food();
        if (food != null && !found.contains(food)) {
          found.add(food);
        }
      }
    }
    this.all = found.toArray(new Food[0]);
  }

  int size() {
    return all.length;
  }

  Food at(int place) {
    return all[place];
  }

  /** The place of a food that was given; a tank gets few enough to look them through. */
  int of(Food food) {
    int place = 0;
    while (all[place] != food) {
      place++;
    }
    return place;
  }
}
