package provender.engine.diet;

import java.util.ArrayList;
import java.util.List;
import provender.engine.food.Component;
import provender.engine.food.Food;
import provender.engine.quantity.Day;
import provender.engine.reference.DietRule;
import provender.engine.source.Step;

/** The last whole days of a rule's own window, fish by fish, in dry matter. */
final class Window {
  private static final double A_TENTH = 0.1;

  private final Case looked;
  private final DietRule rule;
  private final int from;
  private final int to;

  /** A question about one food. */
  interface Which {
    boolean is(Food food);
  }

  /** A question about what one fish ate. */
  interface Concern {
    boolean is(FishDiet diet);
  }

  Window(Case looked, String rule) {
    this.looked = looked;
    this.rule = looked.reference().rule(rule);
    this.to = looked.todayIndex();
    this.from = Math.max(0, to - this.rule.windowDays());
  }

  DietRule rule() {
    return rule;
  }

  /** Fish the rule speaks for, that are here, have been for the whole window, and ate in it. */
  List<FishDiet> fish(Concern concern) {
    List<FishDiet> found = new ArrayList<>();
    for (FishDiet diet : looked.review().diets()) {
      boolean asked = diet.fish().isHere() && rule.speaksFor(diet.fish().guild().key());
      boolean longEnough = !looked.review().day(from).isBefore(looked.start(diet));
      if (asked && longEnough && diet.dryGrams(from, to) > 0 && concern.is(diet)) {
        found.add(diet);
      }
    }
    return found;
  }

  double dry(FishDiet diet, Which which) {
    double sum = 0;
    for (int food = 0; food < diet.foods().size(); food++) {
      if (which.is(diet.foods().at(food))) {
        sum += diet.dryGrams(food, from, to);
      }
    }
    return sum;
  }

  /** The part of a component in all a fish ate, mixed foods counted by what is in them. */
  double component(FishDiet diet, Component component) {
    return diet.share(component, from, to);
  }

  /** Feedings a day at which it is reckoned to have eaten. */
  double mealsPerDay(FishDiet diet) {
    return (double) diet.meals(from, to) / (to - from);
  }

  /** Part of what a fish ate, 0 when it ate nothing of the whole. */
  double share(FishDiet diet, Which which, Which whole) {
    double all = dry(diet, whole);
    return all > 0 ? dry(diet, which) / all : 0;
  }

  double share(FishDiet diet, Which which) {
    double all = diet.dryGrams(from, to);
    return all > 0 ? dry(diet, which) / all : 0;
  }

  /** The largest part that one food has of the diet, those passed over that are made to be one. */
  double largestPart(FishDiet diet, Which passedOver) {
    double largest = 0;
    for (int food = 0; food < diet.foods().size(); food++) {
      if (!passedOver.is(diet.foods().at(food))) {
        largest = Math.max(largest, diet.dryGrams(food, from, to));
      }
    }
    double all = diet.dryGrams(from, to);
    return all > 0 ? largest / all : 0;
  }

  /** Whether any food of the window brought a supplement. */
  boolean brought(FishDiet diet, String supplement) {
    return diet.hadWith(supplement, from, to);
  }

  /** One finding for all of them, or none; {@code worst} is the share to name, in parts of a hundred on screen. */
  List<Finding> finding(List<FishDiet> concerned, double worst, List<Finding.Offer> offers) {
    return finding(concerned, worst, 100, offers);
  }

  /** The same for a number that is no share. */
  List<Finding> countFinding(List<FishDiet> concerned, double worst, List<Finding.Offer> offers) {
    return finding(concerned, worst, 1, offers);
  }

  private List<Finding> finding(List<FishDiet> concerned, double worst, double shown, List<Finding.Offer> offers) {
    if (concerned.isEmpty()) {
      return List.of();
    }
    List<String> fish = new ArrayList<>();
    for (FishDiet diet : concerned) {
      fish.add(diet.fish().key());
    }
    Day since = looked.review().day(from);
    int days = looked.today().since(since);
    List<Step.Input> facts =
        List.of(
            Step.input("percent", shown * worst, "%"),
            Step.input("limitPercent", shown * rule.limit(), "%"),
            Step.input("windowDays", days, "d"));
    Step why =
        Step.of(
            "windowShare",
            "Σ dry matter of it / Σ dry matter, against the limit",
            worst,
            "1",
            rule.sources().isEmpty() ? Step.PRACTICE : rule.sources().get(0),
            Step.input("limit", rule.limit(), "1"),
            Step.input("days", days, "d"));
    return List.of(new Finding(rule, fish, null, since, days, offers, facts, List.of(why)));
  }

  /** The rule's own foods with the grams that are a tenth of what these fish are due in a day. */
  List<Finding.Offer> offers(List<FishDiet> concerned) {
    double due = 0;
    for (FishDiet diet : concerned) {
      due += looked.dueToday(diet);
    }
    List<Finding.Offer> offers = new ArrayList<>();
    for (String key : looked.usualFirst(rule.offerFoods())) {
      Food food = looked.reference().food(key);
      if (food != null && food.kjPerGram() > 0) {
        offers.add(new Finding.Offer(key, due * A_TENTH / food.kjPerGram()));
      }
    }
    return offers;
  }

}
