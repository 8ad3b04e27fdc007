package provender.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import provender.engine.intake.MealShares;
import provender.engine.reference.Reference;
import provender.engine.source.Constant;
import provender.engine.source.Step;

/** {@code meal-shares}: one quantity of food split among the fish at a table. */
final class MealSharesCall {
  private static final double MOST_GRAMS = 10_000_000;

  private MealSharesCall() {}

  static Map<String, Object> answer(Question asked, Reference reference) {
    double grams = asked.number("grams", 0, MOST_GRAMS);
    double exponent =
        asked.numberOr("exponent", 0.1, 2, reference.constants().value(Constant.MASS_EXPONENT));
    List<Question> eaters = asked.list("eaters");
    double[] weights = new double[eaters.size()];
    double[] caps = new double[eaters.size()];
    List<String> ids = new ArrayList<>();
    for (int i = 0; i < weights.length; i++) {
      Question eater = eaters.get(i);
      ids.add(eater.text("id"));
      double metabolic = Math.pow(eater.positive("weightGrams", MOST_GRAMS) / 1000, exponent);
      double liking = eater.numberOr("preference", 0, 1000, 1) * eater.numberOr("dominance", 0, 1000, 1);
      weights[i] = metabolic * eater.numberOr("count", 1, 100_000, 1) * liking;
      caps[i] = eater.numberOr("capGrams", 0, MOST_GRAMS, MOST_GRAMS);
      eater.nothingElse();
    }
    asked.nothingElse();
    if (asked.isFaulty()) {
      return Map.of();
    }
    MealShares split = MealShares.split(grams, weights, caps);
    List<Object> shares = new ArrayList<>();
    for (int i = 0; i < weights.length; i++) {
      shares.add(Shapes.object("id", ids.get(i), "grams", split.grams(i)));
    }
    Step step =
        Step.of(
            "mealShares",
            "count × BW(kg)^exponent × preference × dominance, capped, excess shared again",
            grams - split.leftoverGrams(),
            "g",
            Step.PRACTICE,
            Step.input("exponent", exponent, ""));
    return Shapes.object(
        "eaters", shares, "leftoverGrams", split.leftoverGrams(), "why", Shapes.steps(List.of(step)));
  }
}
