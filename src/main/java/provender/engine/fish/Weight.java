package provender.engine.fish;

import org.jspecify.annotations.Nullable;
import provender.engine.quantity.Day;
import provender.engine.quantity.Range;
import provender.engine.source.Basis;
import provender.engine.source.Constant;
import provender.engine.source.Constants;
import provender.engine.source.Figure;
import provender.engine.source.Step;

/**
 * The mass of one fish on a day, in grams, with the error it may have, and how old the knowledge is.
 *
 * @param grows whether the mass was carried along the species' growth curve since it was measured
 * @param gainGrams what it gains in a day, nothing where no curve is known
 */
public record Weight(Figure grams, int ageDays, boolean grows, Range gainGrams) {
  private static final String FORMULA = "W = a × L^b";

  /** The last weighed mass; else from the last length; else from a part of the greatest length, marked as assumed. */
  public static Weight of(Fish fish, Day day, Constants constants) {
    Measurement weighed = fish.lastWeighed(day);
    if (weighed != null) {
      Step step = Step.of("weighed", "", weighed.grams(), "g", Step.ENTERED);
      return grown(Figure.of(Range.exactly(weighed.grams()), Basis.MEASURED, step), age(weighed, day), fish.species());
    }
    LengthWeight relation = relation(fish.species(), constants);
    Measurement length = fish.lastLength(day);
    return length != null
        ? grown(fromLength(relation, length, constants), age(length, day), fish.species())
        : new Weight(assumed(relation, fish.species(), constants), 0, false, Range.ZERO);
  }

  /** Whether it was taken as it stands from a measurement of long ago. */
  public boolean isStale(Constants constants) {
    return !grows && ageDays > constants.value(Constant.STALE_DAYS);
  }

  /** Carried from the day it was measured along the species' curve, where there is one; else it stands still. */
  private static Weight grown(Figure measured, int days, @Nullable Species species) {
    GrowthCurve curve = species == null ? null : species.growth();
    if (species == null || curve == null) {
      return new Weight(measured, days, false, Range.ZERO);
    }
    LengthWeight relation = species.lengthWeight();
    double then = relation.lengthCm(measured.value());
    double now = curve.lengthAfterCm(relation, then, days);
    Range gain = curve.gainGrams(relation, now);
    if (days == 0) {
      return new Weight(measured, days, true, gain);
    }
    double factor = relation.grams(now) / relation.grams(then);
    Range before = measured.range();
    Range grams = new Range(before.low(), before.value() * factor, before.high() * factor);
    Step step =
        Step.of(
            "grown",
            "L = Linf − (Linf − L₀) exp(−K t), W = W₀ (L / L₀)^b",
            grams.value(),
            "g",
            curve.source(),
            Step.input("longest", curve.longestCm(), "cm"),
            Step.input("perYear", curve.perYear(), "1/a"),
            Step.input("days", days, "d"),
            Step.input("length", now, "cm"));
    return new Weight(new Figure(grams, Basis.ESTIMATED, measured.whyThen(step)), days, true, gain);
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
