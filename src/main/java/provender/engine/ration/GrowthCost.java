package provender.engine.ration;

import provender.engine.quantity.Range;
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

  /** The energy that a gain costs by the usual line, in kJ; fish are known to differ fourfold in what they make of it. */
  public static Range usualKj(double grams, Range gainGrams, Constants constants) {
    if (gainGrams.high() <= 0) {
      return Range.ZERO;
    }
    Range efficiency = constants.range(Constant.GROWTH_EFFICIENCY);
    double price = usual(constants).kjPerGram(grams);
    return Range.around(
        gainGrams.low() * price * efficiency.value() / efficiency.high(),
        gainGrams.value() * price,
        gainGrams.high() * price * efficiency.value() / efficiency.low());
  }

  /** The price of one gram gained by a fish of that mass, in kJ; NaN where nobody published it. */
  public double kjPerGram(double grams) {
    return Double.isNaN(fixedKj) ? bodyEnergyA * Math.pow(grams, bodyEnergyB) / efficiency : fixedKj;
  }
}
