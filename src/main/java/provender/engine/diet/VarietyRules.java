package provender.engine.diet;

import java.util.List;

/** Rules about diets that lean on one thing. */
final class VarietyRules {
  private VarietyRules() {}

  static List<Finding> brineShrimpAloneIsNoDiet(Case looked) {
    Window week = new Window(looked, "only-plain-brine");
    return NutrientRules.without(week, "hufa_vitamin_soak", food -> food.has("unenriched"));
  }

  /** Of the fish a predator eats, enough must come with bones and organs. */
  static List<Finding> predatorsGetWholePrey(Case looked) {
    Window fortnight = new Window(looked, "fillet-only");
    double limit = fortnight.rule().limit();
    Window.Which whole = food -> food.has("whole_prey");
    Window.Which fish = food -> food.category().equals("fish");
    List<FishDiet> concerned =
        fortnight.fish(diet -> fortnight.dry(diet, fish) > 0
            && fortnight.share(diet, fish) > limit && fortnight.share(diet, whole, fish) < limit);
    double worst = 1;
    for (FishDiet diet : concerned) {
      worst = Math.min(worst, fortnight.share(diet, whole, fish));
    }
    return fortnight.finding(concerned, worst, fortnight.offers(concerned));
  }

  static List<Finding> nobodyLivesOnOneFood(Case looked) {
    Window month = new Window(looked, "one-food");
    double limit = month.rule().limit();
    List<FishDiet> concerned = month.fish(diet -> largest(month, diet) > limit);
    double worst = 0;
    for (FishDiet diet : concerned) {
      worst = Math.max(worst, largest(month, diet));
    }
    return month.finding(concerned, worst, List.of());
  }

  /** Complete foods are made to be the whole of a diet. */
  private static double largest(Window window, FishDiet diet) {
    return window.largestPart(diet, food -> food.has("complete"));
  }
}
