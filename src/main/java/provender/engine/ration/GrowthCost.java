package provender.engine.ration;

import provender.engine.source.Constant;
import provender.engine.source.Constants;

/**
 * What a gram of growth costs: a fixed price in kJ, or the energy laid down, {@code a × W(g)^b}, over the part that is not
 * lost on the way. Where a line publishes neither, growth has no price and both are NaN.
 */
public record GrowthCost(double fixedKj, double bodyEnergyA, double bodyEnergyB, double efficiency) {

  public static GrowthCost usual(Constants constants) {
    return new GrowthCost(
        Double.NaN,
        constants.value(Constant.GROWTH_BODY_ENERGY_A),
        constants.value(Constant.GROWTH_BODY_ENERGY_B),
        constants.value(Constant.GROWTH_EFFICIENCY));
  }

  /** The price of one gram gained by a fish of that mass, in kJ; NaN where nobody published it. */
  public double kjPerGram(double grams) {
    return Double.isNaN(fixedKj) ? bodyEnergyA * Math.pow(grams, bodyEnergyB) / efficiency : fixedKj;
  }
}
