package provender.engine.diet;

import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.engine.fish.Band;
import provender.engine.food.Component;
import provender.engine.food.Food;

/** Rules about algae and what is offered in their place. */
final class PlantRules {
  private PlantRules() {}

  /** A grazer that gets algae every day may still fill up on meat; one that gets none at all has a finding of its own. */
  static List<Finding> grazersGetEnoughAlgae(Case looked) {
    Window week = new Window(looked, "too-much-meat-grazer");
    List<FishDiet> concerned =
        week.fish(diet -> {
          Band band = diet.fish().guild().band(Component.ALGAE);
          boolean lately = band != null && looked.daysWithout(diet, Component.ALGAE) <= band.gapDays();
          return band != null && lately && algae(week, diet) < band.minShare();
        });
    double worst = 1;
    for (FishDiet diet : concerned) {
      worst = Math.min(worst, algae(week, diet));
    }
    return week.finding(concerned, worst, week.offers(concerned));
  }

  static List<Finding> kelpStaysASmallPart(Case looked) {
    return tooMuchOf(new Window(looked, "too-much-kelp"), food -> food.has("iodine_high"), null);
  }

  static List<Finding> spinachStaysASmallPart(Case looked) {
    return tooMuchOf(new Window(looked, "oxalate-greens"), food -> food.has("oxalate_high"), null);
  }

  static List<Finding> greensOfTheLandDoNotReplaceAlgae(Case looked) {
    return tooMuchOf(
        new Window(looked, "greens-only"), PlantRules::isOfTheLand, food -> isOfTheLand(food) || food.isAlgae());
  }

  /** More of one sort of food than the rule's limit, as part of a whole; of all that was eaten when none is named. */
  private static List<Finding> tooMuchOf(Window window, Window.Which which, Window.@Nullable Which whole) {
    double limit = window.rule().limit();
    List<FishDiet> concerned = window.fish(diet -> part(window, diet, which, whole) > limit);
    double worst = 0;
    for (FishDiet diet : concerned) {
      worst = Math.max(worst, part(window, diet, which, whole));
    }
    return window.finding(concerned, worst, window.offers(concerned));
  }

  private static double part(Window window, FishDiet diet, Window.Which which, Window.@Nullable Which whole) {
    return whole == null ? window.share(diet, which) : window.share(diet, which, whole);
  }

  private static boolean isOfTheLand(Food food) {
    return food.category().equals("greens");
  }

  /** The part of all dry matter that is algae, mixed foods counted by what is in them. */
  private static double algae(Window window, FishDiet diet) {
    return window.component(diet, Component.ALGAE);
  }
}
