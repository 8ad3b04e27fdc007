package provender.engine.food;

import java.util.List;
import provender.engine.quantity.Range;
import provender.engine.source.Basis;
import provender.engine.source.Constant;
import provender.engine.source.Constants;
import provender.engine.source.Figure;
import provender.engine.source.Step;

/** The energy in one gram of a food as fed: what a bomb calorimeter would find, and what a fish gets out of it. */
public final class FoodEnergy {
  private FoodEnergy() {}

  /** Gross energy in kJ per gram as fed, fibre counted as carbohydrate. */
  public static double grossKjPerGram(Composition food, Constants constants) {
    return (food.proteinGrams() * constants.value(Constant.GROSS_PROTEIN_KJ)
            + food.fatGrams() * constants.value(Constant.GROSS_FAT_KJ)
            + food.carbohydrateGrams() * constants.value(Constant.GROSS_CARBOHYDRATE_KJ))
        / 100;
  }

  /** Digestible energy in kJ per gram as fed; fibre gives none. */
  public static double digestibleKjPerGram(Composition food, Digestibility part, Constants constants) {
    return (food.proteinGrams() * constants.value(Constant.GROSS_PROTEIN_KJ) * part.protein()
            + food.fatGrams() * constants.value(Constant.GROSS_FAT_KJ) * part.fat()
            + food.nfeGrams() * constants.value(Constant.GROSS_CARBOHYDRATE_KJ) * part.carbohydrate())
        / 100;
  }

  /** Digestible energy per gram, with the wide range that seaweed deserves. */
  static Figure of(Composition food, boolean algae, String source, Constants constants) {
    double gross = grossKjPerGram(food, constants);
    Digestibility part = algae ? Digestibility.ofAlgae(constants) : Digestibility.usual(constants);
    double digestible = digestibleKjPerGram(food, part, constants);
    Range range =
        algae
            ? Range.around(
                gross * constants.value(Constant.ALGAE_DIGEST_LOW),
                digestible,
                gross * constants.value(Constant.ALGAE_DIGEST_HIGH))
            : Range.exactly(digestible);
    String ofParts = constants.source(algae ? Constant.ALGAE_DIGEST_PROTEIN : Constant.DIGEST_PROTEIN);
    return new Figure(range, Basis.ESTIMATED, steps(food, part, source, ofParts, constants));
  }

  /** How the energy of a food comes about: what is in it, and what can be digested. */
  public static List<Step> steps(
      Composition food, Digestibility part, String ofFood, String ofParts, Constants constants) {
    return List.of(
        Step.of(
            "grossEnergy",
            "(protein × 23.6 + fat × 39.5 + carbohydrate × 17.2) / 100",
            grossKjPerGram(food, constants),
            "kJ/g",
            ofFood,
            Step.input("protein", food.proteinGrams(), "g/100 g"),
            Step.input("fat", food.fatGrams(), "g/100 g"),
            Step.input("carbohydrate", food.carbohydrateGrams(), "g/100 g")),
        Step.of(
            "digestibleEnergy",
            "Σ nutrient × energy × digestible part",
            digestibleKjPerGram(food, part, constants),
            "kJ/g",
            ofParts,
            Step.input("proteinDigestible", part.protein(), "1"),
            Step.input("fatDigestible", part.fat(), "1"),
            Step.input("carbohydrateDigestible", part.carbohydrate(), "1")));
  }
}
