package provender.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import provender.engine.feeder.Drops;
import provender.engine.reference.Reference;
import provender.engine.source.Step;

/** {@code drops}: what one drop of an auto-feeder weighs, and what can be promised from it. */
final class DropsCall {
  private static final double HEAVIEST_GRAMS = 100_000;
  private static final double UNITS_MIXED_UP = 100;
  private static final double USUAL_CONFIDENCE = 0.95;
  private static final double USUAL_PRECISION = 0.05;

  private DropsCall() {}

  static Map<String, Object> answer(Question asked, Reference reference) {
    double[] weighings = asked.numbers("weighingsGrams", 2, Double.MIN_VALUE, HEAVIEST_GRAMS);
    int drops = (int) asked.wholeOr("dropsPerWeighing", 1, 100_000, 1);
    double confidence = asked.numberOr("confidence", 0.5, 0.999, USUAL_CONFIDENCE);
    double precision = asked.numberOr("precision", 0.001, 1, USUAL_PRECISION);
    double[] next = asked.has("predictDrops") ? asked.numbers("predictDrops", 1, 1, 100_000) : new double[] {1};
    asked.nothingElse();
    if (!asked.isFaulty() && farApart(weighings)) {
      asked.refuse("weighingsGrams", "weighings of one size: these lie a hundredfold apart; was one in other units?");
    }
    return asked.isFaulty() ? Map.of() : answer(Drops.weighed(weighings, drops, confidence), next, precision);
  }

  private static Map<String, Object> answer(Drops drops, double[] next, double precision) {
    List<Object> predictions = new ArrayList<>();
    for (double k : next) {
      predictions.add(Shapes.object("drops", k, "grams", Shapes.range(drops.prediction(k))));
    }
    Step step =
        Step.of(
            "dropMean",
            "m ± t × s / √n",
            drops.mean(),
            "g",
            "nist_mean_interval",
            Step.input("weighings", drops.weighings(), ""),
            Step.input("deviation", drops.deviation(), "g"),
            Step.input("t", drops.t(), ""));
    return Shapes.object(
        "gramsPerDrop", Shapes.range(drops.interval()),
        "standardDeviationGrams", drops.deviation(),
        "coefficientOfVariation", drops.variation(),
        "t", drops.t(),
        "weighingsNeeded", (double) drops.weighingsFor(precision),
        "predictions", predictions,
        "why", Shapes.steps(List.of(step)));
  }

  private static boolean farApart(double[] weighings) {
    double least = Double.MAX_VALUE;
    double most = 0;
    for (double grams : weighings) {
      least = Math.min(least, grams);
      most = Math.max(most, grams);
    }
    return most > UNITS_MIXED_UP * least;
  }
}
