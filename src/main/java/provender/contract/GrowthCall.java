package provender.contract;

import java.util.List;
import java.util.Map;
import provender.engine.fish.Growth;
import provender.engine.reference.Reference;
import provender.engine.source.Step;

/** {@code growth}: a fish some days on, along its von Bertalanffy curve. */
final class GrowthCall {
  private static final double LONGEST_CM = 2000;
  private static final double MOST_DAYS = 36_525;

  private GrowthCall() {}

  static Map<String, Object> answer(Question asked, Reference reference) {
    double longest = asked.positive("lInfCm", LONGEST_CM);
    Growth growth =
        new Growth(
            longest,
            asked.positive("kPerYear", 100),
            asked.numberOr("t0Years", -100, 100, 0),
            asked.positive("a", 1000),
            asked.number("b", 1, 5));
    double length = asked.positive("lengthCm", LONGEST_CM);
    double days = asked.number("days", 0, MOST_DAYS);
    if (length >= longest) {
      asked.refuse("lengthCm", "a length below lInfCm: at that length the curve stands still");
    }
    asked.nothingElse();
    if (asked.isFaulty()) {
      return Map.of();
    }
    double after = growth.lengthAfterCm(length, days);
    double gain = growth.grams(after) - growth.grams(length);
    return Shapes.object(
        "ageYears", growth.ageYears(length),
        "lengthCm", after,
        "weightGrams", growth.grams(after),
        "gainGramsPerDay", days > 0 ? gain / days : 0.0,
        "gainCmPerDay", days > 0 ? (after - length) / days : 0.0,
        "why",
            Shapes.steps(
                List.of(
                    Step.of(
                        "lengthAfter",
                        "Linf − (Linf − L) × exp(−K × days / 365)",
                        after,
                        "cm",
                        Step.ENTERED,
                        Step.input("longest", longest, "cm"),
                        Step.input("perYear", growth.perYear(), "1/a"),
                        Step.input("length", length, "cm"),
                        Step.input("days", days, "d")),
                    Step.of(
                        "massFromLength",
                        "W = a × L^b",
                        growth.grams(after),
                        "g",
                        Step.ENTERED,
                        Step.input("a", growth.a(), ""),
                        Step.input("b", growth.b(), "")))));
  }
}
