package provender.engine.diet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import provender.engine.food.Food;
import provender.engine.quantity.Day;
import provender.engine.reference.DietRule;
import provender.engine.source.Constant;
import provender.engine.source.Constants;
import provender.engine.source.Step;

/** Rules about how much: the display as one table, and each fish that eats alone, over the last seven whole days. */
final class EnergyRules {
  private static final int WINDOW = 7;
  private static final int LEAST_DAYS = 3;

  private EnergyRules() {}

  /** A limit on given over due, and the side of it that is wrong. */
  private record Limit(DietRule rule, Constant constant, double ratio, boolean above) {
    boolean isBroken(double given, double due) {
      return above ? given > due * ratio : given < due * ratio;
    }
  }

  static List<Finding> nobodyGetsTooLittle(Case looked) {
    return broken(looked, limit(looked, "too-little-food", Constant.UNDERFED_RATIO, false));
  }

  static List<Finding> nobodyGetsTooMuch(Case looked) {
    return broken(looked, limit(looked, "too-much-food", Constant.OVERFED_RATIO, true));
  }

  private static Limit limit(Case looked, String rule, Constant constant, boolean above) {
    return new Limit(looked.reference().rule(rule), constant, constants(looked).value(constant), above);
  }

  private static List<Finding> broken(Case looked, Limit limit) {
    List<Finding> findings = new ArrayList<>();
    Review review = looked.review();
    Day begun = looked.begun();
    if (begun != null) {
      judge(looked, limit, List.of(), begun, review::dueKj, review::givenKj, findings);
    }
    for (FishDiet diet : review.diets()) {
      if (diet.fish().inIsolation() && diet.fish().isHere()) {
        List<String> fish = List.of(diet.fish().key());
        judge(
            looked,
            limit,
            fish,
            looked.start(diet),
            day -> diet.dueKj(day, day + 1),
            day -> diet.gotKj(day, day + 1),
            findings);
      }
    }
    return findings;
  }

  private static void judge(
      Case looked,
      Limit limit,
      List<String> fish,
      Day start,
      IntToDoubleFunction dueOn,
      IntToDoubleFunction givenOn,
      List<Finding> findings) {
    int to = looked.todayIndex();
    int from = Math.max(0, Math.max(to - WINDOW, start.since(looked.review().day(0))));
    double due = 0;
    double given = 0;
    int daysOutside = 0;
    int firstOutside = to;
    for (int day = from; day < to; day++) {
      due += dueOn.applyAsDouble(day);
      given += givenOn.applyAsDouble(day);
      if (limit.isBroken(givenOn.applyAsDouble(day), dueOn.applyAsDouble(day))) {
        daysOutside++;
        firstOutside = Math.min(firstOutside, day);
      }
    }
    if (to - from >= LEAST_DAYS && due > 0 && limit.isBroken(given, due)) {
      Day since = looked.review().day(firstOutside - 1);
      findings.add(
          new Finding(
              limit.rule(),
              fish,
              null,
              since,
              looked.today().since(since),
              limit.above() ? List.of() : enough(looked, due / (to - from)),
              facts(given, due, daysOutside, to - from),
              List.of(why(looked, limit, given, due, to - from))));
    }
  }

  private static List<Step.Input> facts(double given, double due, int daysOutside, int days) {
    return List.of(
        Step.input("percent", 100 * given / due, "%"),
        Step.input("givenKj", given, "kJ"),
        Step.input("dueKj", due, "kJ"),
        Step.input("daysOutside", daysOutside, "d"),
        Step.input("windowDays", days, "d"));
  }

  private static Step why(Case looked, Limit limit, double given, double due, int days) {
    return Step.of(
        limit.above() ? "givenOverDueHigh" : "givenOverDueLow",
        "Σ given / Σ due over the last whole days",
        given / due,
        "1",
        constants(looked).source(limit.constant()),
        Step.input("given", given, "kJ"),
        Step.input("due", due, "kJ"),
        Step.input("days", days, "d"),
        constants(looked).input(limit.constant()));
  }

  /** Grams of each usual food that alone would be a day's ration. */
  private static List<Finding.Offer> enough(Case looked, double kjPerDay) {
    List<Finding.Offer> offers = new ArrayList<>();
    for (String key : looked.usualFoods()) {
      Food food = looked.reference().food(key);
      if (food != null && food.kjPerGram() > 0) {
        offers.add(new Finding.Offer(key, kjPerDay / food.kjPerGram()));
      }
    }
    return offers;
  }

  private static Constants constants(Case looked) {
    return looked.reference().constants();
  }
}
