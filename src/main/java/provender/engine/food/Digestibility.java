package provender.engine.food;

import provender.engine.source.Constant;
import provender.engine.source.Constants;

/** The part of each nutrient's energy that a fish gets out of a food, 0 to 1. */
public record Digestibility(double protein, double fat, double carbohydrate) {

  /** What stands in the constants table for flesh, fat and starch. */
  public static Digestibility usual(Constants constants) {
    return new Digestibility(
        constants.value(Constant.DIGEST_PROTEIN),
        constants.value(Constant.DIGEST_FAT),
        constants.value(Constant.DIGEST_CARBOHYDRATE));
  }

  /** What stands in the constants table for seaweeds, which nobody has measured in display fish. */
  public static Digestibility ofAlgae(Constants constants) {
    return new Digestibility(
        constants.value(Constant.ALGAE_DIGEST_PROTEIN),
        constants.value(Constant.ALGAE_DIGEST_FAT),
        constants.value(Constant.ALGAE_DIGEST_CARBOHYDRATE));
  }
}
