package provender.contract;

import java.util.List;
import java.util.Map;
import provender.engine.fish.LengthWeight;
import provender.engine.fish.Species;
import provender.engine.quantity.Range;
import provender.engine.reference.Reference;
import provender.engine.source.Step;

/** {@code weight}: the mass of a fish from its length by the exact form a(L ± e)^b, and its condition when weighed. */
final class WeightCall {
  private static final double LONGEST_CM = 2000;
  private static final double HEAVIEST_GRAMS = 30_000_000;

  private WeightCall() {}

  static Map<String, Object> answer(Question asked, Reference reference) {
    double length = asked.positive("lengthCm", LONGEST_CM);
    double error = asked.numberOr("lengthErrorCm", 0, LONGEST_CM, 0);
    double weighed = asked.has("weighedGrams") ? asked.positive("weighedGrams", HEAVIEST_GRAMS) : Double.NaN;
    String type = asked.textOr("lengthType", "");
    LengthWeight relation = relation(asked, type, reference);
    asked.nothingElse();
    if (asked.isFaulty()) {
      return Map.of();
    }
    Range grams = relation.grams(length, error);
    Step step =
        Step.of(
            "massFromLength",
            "W = a × (L ± e)^b",
            grams.value(),
            "g",
            relation.source(),
            Step.input("a", relation.a(), ""),
            Step.input("b", relation.b(), ""),
            Step.input("length", length, "cm"),
            Step.input("lengthError", error, "cm"));
    return Shapes.object(
        "weightGrams", Shapes.range(grams),
        "relativeCondition", weighed / grams.value(),
        "why", Shapes.steps(List.of(step)));
  }

  private static LengthWeight relation(Question asked, String type, Reference reference) {
    if (!asked.has("species")) {
      double a = asked.positive("a", 1000);
      double b = asked.number("b", 1, 5);
      return new LengthWeight(a, b, type, Range.exactly(1), Step.ENTERED);
    }
    Species species = reference.species(asked.text("species"));
    if (species == null) {
      asked.refuse("species", "a scientific name of the species table, or a and b instead");
      return new LengthWeight(1, 1, type, Range.exactly(1), Step.ENTERED);
    }
    LengthWeight relation = species.lengthWeight();
    if (!type.isEmpty() && !type.equals(relation.lengthType())) {
      asked.refuse("lengthType", relation.lengthType() + " for this species: lengths are never mixed");
    }
    return relation;
  }
}
