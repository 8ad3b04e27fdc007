package provender.engine.ration;

import java.util.ArrayList;
import java.util.List;
import provender.engine.quantity.Range;
import provender.engine.source.Basis;
import provender.engine.source.Constant;
import provender.engine.source.Constants;
import provender.engine.source.Figure;
import provender.engine.source.Step;

/**
 * What weighings say about how much this tank's fish need against the ration: a normal prior on the logarithm of the
 * factor, moved by each fish that was weighed twice. It is shown and never applied by itself.
 */
public final class TankFactor {
  private static final double TWO_SIDES = 1.959963984540054;

  private TankFactor() {}

  /**
   * A fish between two weighings.
   *
   * @param gainGrams of all fish of the line together, negative for a loss
   */
  public record Evidence(double gotKj, double dueKj, double meanGrams, double gainGrams) {

    /** Energy that kept it going over what was reckoned: what it got, less what became of it. */
    double ratio(Constants constants) {
      double price =
          gainGrams >= 0 ? GrowthCost.usual(constants).kjPerGram(meanGrams) : constants.value(Constant.FASTING_KJ_PER_G);
      return (gotKj - gainGrams * price) / dueKj;
    }
  }

  /** The factor with its interval of 95 %; the prior alone when nothing was weighed twice. */
  public static Figure learned(List<Evidence> evidence, Constants constants) {
    double priorSd = constants.value(Constant.PRIOR_FACTOR_SD_LOG);
    double sd = constants.value(Constant.EVIDENCE_SD_LOG);
    double weight = 1 / (priorSd * priorSd);
    double sum = 0;
    List<Double> usable = new ArrayList<>();
    for (Evidence one : evidence) {
      double ratio = one.ratio(constants);
      if (ratio > 0) {
        usable.add(ratio);
        sum += Math.log(ratio) / (sd * sd);
        weight += 1 / (sd * sd);
      }
    }
    double mean = sum / weight;
    double half = TWO_SIDES / Math.sqrt(weight);
    Range factor = Range.around(Math.exp(mean - half), Math.exp(mean), Math.exp(mean + half));
    Step step =
        Step.of(
            "tankFactor",
            "exp(Σ ln ratio / s² / (1/p² + n/s²))",
            factor.value(),
            "1",
            Step.PRACTICE,
            Step.input("weighings", usable.size(), ""),
            constants.input(Constant.PRIOR_FACTOR_SD_LOG),
            constants.input(Constant.EVIDENCE_SD_LOG));
    return Figure.of(factor, Basis.ESTIMATED, step);
  }
}
