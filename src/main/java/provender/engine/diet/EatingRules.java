package provender.engine.diet;

import java.util.ArrayList;
import java.util.List;
import provender.engine.fish.Weight;
import provender.engine.quantity.Day;
import provender.engine.reference.DietRule;
import provender.engine.source.Constant;
import provender.engine.source.Constants;
import provender.engine.source.Step;

/** Rules about whether and how often a fish eats at all. */
final class EatingRules {
  private static final double GRAMS = 1000;

  private EatingRules() {}

  static List<Finding> planktonPickersEatOften(Case looked) {
    Window week = new Window(looked, "too-few-meals");
    double limit = week.rule().limit();
    List<FishDiet> concerned = week.fish(diet -> week.mealsPerDay(diet) < limit);
    double fewest = limit;
    for (FishDiet diet : concerned) {
      fewest = Math.min(fewest, week.mealsPerDay(diet));
    }
    return week.countFinding(concerned, fewest, List.of());
  }

  /** A fish that took nothing since long enough to lose a twentieth of itself, reckoned from its own size. */
  static List<Finding> everyoneEats(Case looked) {
    DietRule rule = looked.reference().rule("not-eating");
    List<Finding> findings = new ArrayList<>();
    for (FishDiet diet : looked.review().diets()) {
      if (diet.fish().isHere() && diet.lastTook() != FishDiet.NEVER) {
        Day last = Day.of(diet.lastTook());
        int days = looked.today().since(last);
        double limit = fastingDays(looked, diet, rule.limit());
        if (days > limit && wasFed(looked, last)) {
          findings.add(notEating(rule, diet, last, days, limit));
        }
      }
    }
    return findings;
  }

  /** A fish that people saw turn from its food on so many of the last days, and did not see eat since. */
  static List<Finding> nobodyTurnsFromFoodForDays(Case looked) {
    DietRule rule = looked.reference().rule("refusing");
    List<Finding> findings = new ArrayList<>();
    for (FishDiet diet : looked.review().diets()) {
      int days = 0;
      int since = looked.todayIndex();
      for (int day = since; day >= Math.max(0, looked.todayIndex() + 1 - rule.windowDays()) && !looked.review().wasSeenEating(diet, day); day--) {
        if (looked.review().turnedAway(diet, day)) {
          days++;
          since = day;
        }
      }
      if (diet.fish().isHere() && days >= rule.limit()) {
        Step why = Step.of("refusedDays", "days seen to refuse with nothing got, not seen to eat since", days, "d", Step.PRACTICE,
            Step.input("limit", rule.limit(), "d"), Step.input("days", rule.windowDays(), "d"));
        findings.add(new Finding(rule, List.of(diet.fish().key()), null, looked.review().day(since), days, List.of(), List.of(), List.of(why)));
      }
    }
    return findings;
  }

  static List<Finding> nobodyKeepsAnObligateCoralEater(Case looked) {
    DietRule rule = looked.reference().rule("obligate-coral");
    List<String> fish = new ArrayList<>();
    for (FishDiet diet : looked.review().diets()) {
      if (diet.fish().isHere() && rule.speaksFor(diet.fish().guild().key())) {
        fish.add(diet.fish().key());
      }
    }
    Step why = Step.of("obligateCoral", "", fish.size(), "", rule.sources().get(0));
    return fish.isEmpty()
        ? List.of()
        : List.of(new Finding(rule, fish, null, looked.today(), 0, List.of(), List.of(), List.of(why)));
  }

  private static Finding notEating(DietRule rule, FishDiet diet, Day last, int days, double limit) {
    List<Step.Input> facts = List.of(Step.input("days", days, "d"), Step.input("limitDays", limit, "d"));
    Step why =
        Step.of(
            "fastingDays",
            "(W0^(1−e) − W1^(1−e)) / ((1−e) × loss / energy per gram)",
            limit,
            "d",
            rule.sources().get(0),
            Step.input("part", rule.limit(), "1"));
    return new Finding(rule, List.of(diet.fish().key()), null, last, days, List.of(), facts, List.of(why));
  }

  /** Someone fed the tank since, so it could have eaten. */
  private static boolean wasFed(Case looked, Day last) {
    int day = looked.todayIndex();
    while (day >= 0 && last.isBefore(looked.review().day(day))) {
      if (looked.review().givenKj(day) > 0) {
        return true;
      }
      day--;
    }
    return false;
  }

  private static double fastingDays(Case looked, FishDiet diet, double part) {
    Constants constants = looked.reference().constants();
    double kilograms = Weight.of(diet.fish(), looked.today(), constants).grams().value() / GRAMS;
    double rest = 1 - constants.value(Constant.FASTING_EXPONENT);
    double lossPerDay = constants.value(Constant.FASTING_KJ) / (constants.value(Constant.FASTING_KJ_PER_G) * GRAMS);
    return (Math.pow(kilograms, rest) - Math.pow(kilograms * (1 - part), rest)) / (rest * lossPerDay);
  }
}
