package provender.engine.water;

import provender.engine.source.Constant;
import provender.engine.source.Constants;

/**
 * What feeding brings into the water, in grams of an element: all of what nobody ate, and what the eaters do not keep.
 *
 * @param given in the food
 * @param retained laid down in growth
 */
public record Load(double given, double retained) {
  public static final Load NONE = new Load(0, 0);

  /**
   * @param uneaten part of the food that nobody ate and nobody took out again
   * @param retention part of what was eaten that growth keeps; 0 for fish that hold their weight
   */
  public static Load of(double given, double uneaten, double retention) {
    return new Load(given, given * (1 - uneaten) * retention);
  }

  public double released() {
    return given - retained;
  }

  /** Nitrogen in so much protein. */
  public static double nitrogen(double proteinGrams, Constants constants) {
    return proteinGrams / constants.value(Constant.PROTEIN_PER_NITROGEN);
  }

  /** Ammonia nitrogen that the filter sees of so much protein, by the rule of recirculating systems. */
  public static double ammoniaNitrogen(double proteinGrams, Constants constants) {
    return proteinGrams * constants.value(Constant.TAN_PER_PROTEIN);
  }
}
