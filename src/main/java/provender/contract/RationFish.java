package provender.contract;

import provender.engine.fish.Guild;
import provender.engine.fish.Species;
import provender.engine.quantity.Range;
import provender.engine.ration.Ration;
import provender.engine.reference.Reference;
import provender.engine.source.Basis;
import provender.engine.source.Constant;
import provender.engine.source.Figure;
import provender.engine.source.Step;

/**
 * One line of fish as a ration request gives it.
 *
 * @param gainGrams growth of one fish in grams a day
 */
record RationFish(String id, Ration.Eater eater, double gainGrams) {
  private static final double HEAVIEST_GRAMS = 30_000_000;
  private static final double LONGEST_CM = 2000;
  private static final double GOOD_CONDITION = 3;

  static RationFish read(Question fish, double activity, Reference reference) {
    String id = fish.text("id");
    Figure mass = mass(fish, reference);
    double count = fish.wholeOr("count", 1, 100_000, 1);
    double gain = fish.numberOr("growthGramsPerDay", 0, 100_000, 0);
    double score = fish.numberOr("conditionScore", 1, 5, GOOD_CONDITION);
    double step = reference.constants().value(Constant.CONDITION_STEP);
    double its = activity(fish, activity, reference) * (1 + step * (GOOD_CONDITION - score));
    fish.nothingElse();
    return new RationFish(id, new Ration.Eater(mass, (int) count, its), gain);
  }

  /** What was asked for everyone, else the guild's own factor. */
  private static double activity(Question fish, double asked, Reference reference) {
    if (!fish.has("guild")) {
      return Double.isNaN(asked) ? 1 : asked;
    }
    Guild guild = reference.guild(fish.text("guild"));
    if (guild == null) {
      return fish.refuse("guild", "a key of the guild table");
    }
    return Double.isNaN(asked) ? guild.rationFactor() : asked;
  }

  private static Figure mass(Question fish, Reference reference) {
    if (!fish.has("species")) {
      double grams = fish.positive("weightGrams", HEAVIEST_GRAMS);
      double safe = Double.isNaN(grams) ? 1 : grams;
      return Figure.of(Range.exactly(safe), Basis.MEASURED, Step.of("weighed", "", safe, "g", Step.ENTERED));
    }
    Species species = reference.species(fish.text("species"));
    double length = fish.positive("lengthCm", LONGEST_CM);
    double error = fish.numberOr("lengthErrorCm", 0, LONGEST_CM, 0);
    if (species == null) {
      fish.refuse("species", "a scientific name of the species table, or weightGrams instead");
    }
    Range grams =
        species == null || Double.isNaN(length) || Double.isNaN(error)
            ? Range.exactly(1)
            : species.lengthWeight().grams(length, error);
    return Figure.of(
        grams, Basis.ESTIMATED, Step.of("massFromLength", "W = a × (L ± e)^b", grams.value(), "g", Step.ENTERED));
  }
}
