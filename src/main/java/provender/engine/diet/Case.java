package provender.engine.diet;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.engine.food.Component;
import provender.engine.food.Food;
import provender.engine.quantity.Day;
import provender.engine.reference.Reference;

/**
 * What the rules look at: the review, today, and what the tank usually gets.
 *
 * @param begun the first day of the tank's log, or null when nothing was logged yet
 */
public record Case(
    Review review, Reference reference, List<String> usualFoods, Day today, @Nullable Day begun, double temperatureC) {

  int todayIndex() {
    return review.days() - 1;
  }

  /** The first day a fish could have been fed by this log: not before the log, its arrival, or the review. */
  Day start(FishDiet diet) {
    Day start = review.day(0);
    Day arrived = diet.fish().arrived();
    if (begun != null && start.isBefore(begun)) {
      start = begun;
    }
    return arrived != null && start.isBefore(arrived) ? arrived : start;
  }

  /**
   * The last day on which a fish had a component; the eve of its first day here when it never had it. Two days are
   * compared up to the last day it ate at all, since a fish that got nothing lacks food, not one component.
   */
  Day lastHad(FishDiet diet, Component component) {
    int last = diet.lastTaken(component);
    return last == FishDiet.NEVER ? start(diet).plus(-1) : Day.of(last);
  }

  int daysWithout(FishDiet diet, Component component) {
    if (diet.lastTook() == FishDiet.NEVER) {
      return 0;
    }
    int upTo = Math.min(today.epochDay(), diet.lastTook() + 1);
    return upTo - lastHad(diet, component).epochDay();
  }

  double dueToday(FishDiet diet) {
    return diet.dueKj(todayIndex(), todayIndex() + 1);
  }

  /** Foods that bring a component, those this tank usually gets first, with the grams that bring so much energy of it. */
  List<Finding.Offer> offers(List<String> foods, Component component, double kj) {
    List<Finding.Offer> offers = new ArrayList<>();
    for (String key : usualFirst(foods)) {
      Food food = reference.food(key);
      if (food != null && food.share(component) > 0 && food.kjPerGram() > 0) {
        offers.add(new Finding.Offer(key, kj / (food.kjPerGram() * food.share(component))));
      }
    }
    return offers;
  }

  List<String> usualFirst(List<String> foods) {
    List<String> ordered = new ArrayList<>();
    for (String food : foods) {
      if (usualFoods.contains(food)) {
        ordered.add(food);
      }
    }
    for (String food : foods) {
      if (!usualFoods.contains(food)) {
        ordered.add(food);
      }
    }
    return ordered;
  }
}
