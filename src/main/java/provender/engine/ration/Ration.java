package provender.engine.ration;

import java.util.ArrayList;
import java.util.List;
import provender.engine.quantity.Energy;
import provender.engine.quantity.Range;
import provender.engine.source.Basis;
import provender.engine.source.Figure;
import provender.engine.source.Step;

/** The digestible energy due per day, for one fish or for everyone at the table, in kJ. */
public final class Ration {
  private static final double A_TENTH_MORE = 1.1;

  private Ration() {}

  /**
   * One line of a roster as the ration sees it.
   *
   * @param growthKj what the whole line's growth costs in a day
   */
  public record Eater(Figure grams, int count, double activity, Range growthKj) {

    /** One that is only to hold its weight. */
    public Eater(Figure grams, int count, double activity) {
      this(grams, count, activity, Range.ZERO);
    }

    /** Metabolic mass of the whole line times its activity, with the error of its mass. */
    Range burden(Model model) {
      Range mass = grams.range();
      Range metabolic =
          Range.around(
              model.metabolicMass(mass.low()), model.metabolicMass(mass.value()), model.metabolicMass(mass.high()));
      return metabolic.times(count * activity);
    }
  }

  /** What one line of the roster is due. */
  public static Figure of(Eater eater, double temperatureC, Model model) {
    Range burden = eater.burden(model);
    double warmth = model.temperatureFactor(temperatureC);
    Range due = burden.times(warmth).timesUnrelated(model.coefficientKj());
    Step step =
        Step.of(
            "maintenance",
            Model.FORMULA,
            due.value(),
            "kJ/d",
            model.source(),
            Step.input("coefficient", model.coefficientKj().value(), "kJ"),
            Step.input("coefficientLow", model.coefficientKj().low(), "kJ"),
            Step.input("coefficientHigh", model.coefficientKj().high(), "kJ"),
            Step.input("mass", eater.grams().value(), "g"),
            Step.input("count", eater.count(), ""),
            Step.input("exponent", model.exponent(), ""),
            Step.input("temperature", temperatureC, "°C"),
            Step.input("temperatureFactor", warmth, ""),
            Step.input("activity", eater.activity(), ""));
    return withGrowth(new Figure(due, basis(eater.grams()), eater.grams().whyThen(step)), eater.growthKj());
  }

  private static Figure withGrowth(Figure maintenance, Range growthKj) {
    if (growthKj.high() <= 0) {
      return maintenance;
    }
    Range due = maintenance.range().plus(growthKj);
    Step step =
        Step.of(
            "growthEnergy",
            "maintenance + gain × energy of a gram gained / part that stays",
            due.value(),
            "kJ/d",
            "lupatsch2003",
            Step.input("maintenance", maintenance.value(), "kJ/d"),
            Step.input("growth", growthKj.value(), "kJ/d"),
            Step.input("growthLow", growthKj.low(), "kJ/d"),
            Step.input("growthHigh", growthKj.high(), "kJ/d"));
    return new Figure(due, maintenance.basis(), maintenance.whyThen(step));
  }

  /**
   * What all of them are due together. The errors of their masses have nothing to do with each other and partly cancel;
   * the coefficient's error is the same for all and does not.
   */
  public static Figure ofAll(List<Eater> eaters, double temperatureC, Model model) {
    Range burden = Range.ZERO;
    Range growth = Range.ZERO;
    double grams = 0;
    for (Eater eater : eaters) {
      growth = growth.plus(eater.growthKj());
      burden = burden.plusUnrelated(eater.burden(model));
      grams += eater.grams().value() * eater.count();
    }
    double warmth = model.temperatureFactor(temperatureC);
    Range due = burden.times(warmth).timesUnrelated(model.coefficientKj());
    List<Step> why = new ArrayList<>();
    why.add(Step.of("biomass", "Σ mass × count", grams, "g", Step.ENTERED, Step.input("lines", eaters.size(), "")));
    why.add(
        Step.of(
            "temperatureFactor",
            "exp(slope × (T − reference))",
            warmth,
            "",
            model.source(),
            Step.input("slope", model.temperatureSlope(), "1/°C"),
            Step.input("temperature", temperatureC, "°C"),
            Step.input("reference", model.referenceC(), "°C")));
    why.add(
        Step.of(
            "maintenanceAll",
            "coefficient × temperature factor × Σ count × BW(kg)^exponent × activity",
            due.value(),
            "kJ/d",
            model.source(),
            Step.input("coefficient", model.coefficientKj().value(), "kJ"),
            Step.input("coefficientLow", model.coefficientKj().low(), "kJ"),
            Step.input("coefficientHigh", model.coefficientKj().high(), "kJ"),
            Step.input("exponent", model.exponent(), ""),
            Step.input("metabolicMass", burden.value(), "kg^exponent")));
    return withGrowth(new Figure(due, Basis.ESTIMATED, why), growth);
  }

  /**
   * What would change the ration of the whole table most, as parts of it: the ends of the coefficient's band, a tenth more
   * mass in every fish, one degree more.
   */
  public static List<Step.Input> whatMatters(List<Eater> eaters, double temperatureC, Model model) {
    double now = ofAll(eaters, temperatureC, model).value();
    if (now <= 0) {
      return List.of();
    }
    Range band = model.coefficientKj();
    List<Eater> heavier = new ArrayList<>();
    for (Eater eater : eaters) {
      Figure mass = eater.grams();
      heavier.add(new Eater(new Figure(mass.range().times(A_TENTH_MORE), mass.basis(), mass.why()), eater.count(), eater.activity(), eater.growthKj()));
    }
    List<Step.Input> changes = new ArrayList<>();
    changes.add(Step.input("coefficientHigh", band.high() / band.value() - 1, "1"));
    changes.add(Step.input("coefficientLow", band.low() / band.value() - 1, "1"));
    changes.add(Step.input("massTenthMore", ofAll(heavier, temperatureC, model).value() / now - 1, "1"));
    changes.add(Step.input("degreeMore", ofAll(eaters, temperatureC + 1, model).value() / now - 1, "1"));
    changes.sort((one, two) -> Double.compare(Math.abs(two.value()), Math.abs(one.value())));
    return changes;
  }

  /**
   * Only the middle of what one line is due: for the many days of a review.
   *
   * @param burden metabolic mass of the line times its activity
   */
  public static Energy middle(double burden, double temperatureC, Model model) {
    return Energy.ofKj(burden * model.temperatureFactor(temperatureC) * model.coefficientKj().value());
  }

  private static Basis basis(Figure mass) {
    return mass.basis() == Basis.ASSUMED ? Basis.ASSUMED : Basis.ESTIMATED;
  }
}
