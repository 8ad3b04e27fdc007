package provender.engine.diet;

import java.util.List;
import provender.engine.food.Component;
import provender.engine.source.Constant;

/** Rules about what a food lacks or destroys, and the supplement that goes with it. */
final class NutrientRules {
  private NutrientRules() {}

  /** Thiaminase destroys thiamine in the food it comes with, and in what lies beside it while it thaws. */
  static List<Finding> thiamineGoesWithThiaminase(Case looked) {
    return without(new Window(looked, "thiaminase-load"), "thiamine", food -> food.has("thiaminase"));
  }

  static List<Finding> vitaminEGoesWithOilyFish(Case looked) {
    double oily = looked.reference().constants().value(Constant.OILY_FAT_G);
    return without(
        new Window(looked, "oily-no-e"),
        "vitamin_e",
        food -> food.category().equals("fish") && food.composition().fatGrams() > oily);
  }

  static List<Finding> everyoneGetsMarineFattyAcids(Case looked) {
    Window week = new Window(looked, "low-hufa");
    return missing(week, diet -> week.brought(diet, "hufa_vitamin_soak"), food -> food.share(Component.N3_HUFA) > 0);
  }

  static List<Finding> everyoneGetsVitaminC(Case looked) {
    Window fortnight = new Window(looked, "low-vitamin-c");
    return missing(
        fortnight,
        diet -> fortnight.brought(diet, "vitamin_c") || fortnight.brought(diet, "vitamin_mix")
            || fortnight.brought(diet, "hufa_vitamin_soak"),
        food -> food.has("complete") || food.isAlgae());
  }

  /** Foods that the table offers against it are those that bring it. */
  static List<Finding> everyoneGetsIodine(Case looked) {
    Window week = new Window(looked, "low-iodine");
    return missing(
        week,
        diet -> false,
        food -> week.rule().offerFoods().contains(food.key()) || food.has("iodine_high") || food.has("complete")
            || food.isAlgae());
  }

  static List<Finding> coloursGetTheirCarotenoids(Case looked) {
    Window month = new Window(looked, "no-carotenoid");
    return missing(month, diet -> month.brought(diet, "astaxanthin"), food -> food.share(Component.CAROTENOID) > 0);
  }

  /** More than the limit of such food, and never the supplement that belongs to it. */
  static List<Finding> without(Window window, String supplement, Window.Which which) {
    double limit = window.rule().limit();
    List<FishDiet> concerned =
        window.fish(diet -> !window.brought(diet, supplement) && window.share(diet, which) > limit);
    double worst = 0;
    for (FishDiet diet : concerned) {
      worst = Math.max(worst, window.share(diet, which));
    }
    return window.finding(concerned, worst, window.offers(concerned));
  }

  /** Nothing in the whole window that brings it, and no supplement either. */
  private static List<Finding> missing(Window window, Window.Concern supplied, Window.Which brings) {
    List<FishDiet> concerned = window.fish(diet -> !supplied.is(diet) && window.dry(diet, brings) <= 0);
    return window.finding(concerned, 0, window.offers(concerned));
  }
}
