package provender.contract;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import provender.engine.food.Composition;
import provender.engine.food.Digestibility;
import provender.engine.food.FoodEnergy;
import provender.engine.reference.Reference;
import provender.engine.source.Constant;
import provender.engine.source.Constants;

/** {@code food-energy}: the energy in a gram of food from its label, per 100 g as fed. */
final class FoodEnergyCall {
  private static final double FULLEST_LABEL = 103;

  private FoodEnergyCall() {}

  static Map<String, Object> answer(Question asked, Reference reference) {
    Constants constants = reference.constants();
    Composition food = composition(asked);
    Digestibility part = digestibility(asked.inner("digestibility"), Digestibility.usual(constants));
    asked.nothingElse();
    if (asked.isFaulty()) {
      return Map.of();
    }
    double gross = FoodEnergy.grossKjPerGram(food, constants);
    double digestible = FoodEnergy.digestibleKjPerGram(food, part, constants);
    double dry = food.dryFraction();
    return Shapes.object(
        "nfeGrams", food.nfeGrams(),
        "grossKjPerGram", Shapes.object("asFed", gross, "dryMatter", gross / dry),
        "digestibleKjPerGram", Shapes.object("asFed", digestible, "dryMatter", digestible / dry),
        "why",
            Shapes.steps(
                FoodEnergy.steps(
                    food, part, constants.source(Constant.GROSS_PROTEIN_KJ), constants.source(Constant.DIGEST_PROTEIN), constants)));
  }

  private static Composition composition(Question asked) {
    double water = asked.number("waterGrams", 0, 99.9);
    double protein = asked.number("proteinGrams", 0, 100);
    double fat = asked.number("fatGrams", 0, 100);
    double fibre = asked.numberOr("fibreGrams", 0, 100, 0);
    double ash = asked.numberOr("ashGrams", 0, 100, 0);
    Composition food =
        asked.has("carbohydrateGrams")
            ? new Composition(water, protein, fat, asked.number("carbohydrateGrams", 0, 100), fibre, ash)
            : Composition.byDifference(water, protein, fat, fibre, ash);
    if (food.sumGrams() > FULLEST_LABEL) {
      asked.refuse("waterGrams", "a label whose parts add up to at most 103 g in 100 g");
    }
    return food;
  }

  private static Digestibility digestibility(@Nullable Question asked, Digestibility usual) {
    if (asked == null) {
      return usual;
    }
    Digestibility given =
        new Digestibility(
            asked.numberOr("protein", 0, 1, usual.protein()),
            asked.numberOr("fat", 0, 1, usual.fat()),
            asked.numberOr("carbohydrate", 0, 1, usual.carbohydrate()));
    asked.nothingElse();
    return given;
  }
}
