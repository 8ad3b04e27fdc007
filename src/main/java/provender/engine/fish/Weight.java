package provender.engine.fish;

import org.jspecify.annotations.Nullable;
import provender.engine.quantity.Day;
import provender.engine.quantity.Range;
import provender.engine.source.Basis;
import provender.engine.source.Constant;
import provender.engine.source.Constants;
import provender.engine.source.Figure;
import provender.engine.source.Step;

/** The mass of one fish on a day, in grams, with the error it may have, and how old the knowledge is. */
public record Weight(Figure grams, int ageDays) {
  private static final String FORMULA = "W = a × L^b";

  /** The last weighed mass; else from the last length; else from a part of the greatest length, marked as assumed. */
  public static Weight of(Fish fish, Day day, Constants constants) {
    Measurement weighed = fish.lastWeighed(day);
    if (weighed != null) {
      Step step = Step.of("weighed", "", weighed.grams(), "g", Step.ENTERED);
      return new Weight(Figure.of(Range.exactly(weighed.grams()), Basis.MEASURED, step), age(weighed, day));
    }
    LengthWeight relation = relation(fish.species(), constants);
    Measurement length = fish.lastLength(day);
    return length != null
        ? new Weight(fromLength(relation, length, constants), age(length, day))
        : new Weight(assumed(relation, fish.species(), constants), 0);
  }

  public boolean isStale(Constants constants) {
    return ageDays > constants.value(Constant.STALE_DAYS);
  }

  private static Figure fromLength(LengthWeight relation, Measurement length, Constants constants) {
    boolean throughGlass = Double.isNaN(length.errorCm());
    double error = throughGlass ? constants.value(Constant.GLASS_LENGTH_ERROR_CM) : length.errorCm();
    Step read = Step.of("length", "", length.lengthCm(), "cm", Step.ENTERED);
    Step off =
        Step.of(
            "lengthError", "", error, "cm", throughGlass ? constants.source(Constant.GLASS_LENGTH_ERROR_CM) : Step.ENTERED);
    return masses(relation, length.lengthCm(), error, Basis.ESTIMATED, read, off);
  }

  private static Figure assumed(LengthWeight relation, @Nullable Species species, Constants constants) {
    double part = constants.value(Constant.UNKNOWN_LENGTH_PART);
    double length = species == null ? constants.value(Constant.UNKNOWN_LENGTH_CM) : species.maxLengthCm() * part;
    Step guess = Step.of("assumedLength", "", length, "cm", constants.source(Constant.UNKNOWN_LENGTH_PART));
    return masses(relation, length, length / 3, Basis.ASSUMED, guess);
  }

  private static Figure masses(LengthWeight relation, double length, double error, Basis basis, Step... read) {
    Range range = relation.grams(length, error).timesUnrelated(relation.scatter());
    Step mass =
        Step.of(
            "massFromLength",
            FORMULA,
            range.value(),
            "g",
            relation.source(),
            Step.input("a", relation.a(), ""),
            Step.input("b", relation.b(), ""),
            Step.input("scatterLow", relation.scatter().low(), "1"),
            Step.input("scatterHigh", relation.scatter().high(), "1"));
    return new Figure(range, basis, Figure.of(range, basis, read).whyThen(mass));
  }

  private static LengthWeight relation(@Nullable Species species, Constants constants) {
    if (species != null) {
      return species.lengthWeight();
    }
    double band = constants.value(Constant.TABLE_WEIGHT_BAND);
    return new LengthWeight(
        constants.value(Constant.UNKNOWN_LENGTH_WEIGHT_A),
        constants.value(Constant.UNKNOWN_LENGTH_WEIGHT_B),
        "TL",
        new Range(1 - band, 1, 1 + band),
        constants.source(Constant.UNKNOWN_LENGTH_WEIGHT_A));
  }

  private static int age(Measurement measurement, Day day) {
    return Math.max(0, day.since(measurement.on()));
  }
}
