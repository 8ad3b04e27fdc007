package provender.engine.ration;

import provender.engine.quantity.Range;
import provender.engine.source.Constant;
import provender.engine.source.Constants;

/**
 * A maintenance line: {@code coefficient × BW(kg)^exponent × exp(slope × (T − reference))}, in kJ per day.
 *
 * @param coefficientKj the coefficient with its band, in kJ per kg^exponent and day at the reference temperature
 */
public record Model(Range coefficientKj, double exponent, double temperatureSlope, double referenceC, String source) {
  static final String FORMULA = "coefficient × BW(kg)^exponent × exp(slope × (T − reference)) × activity";

  /** The line in the constants table, gathered from six published ones. */
  public static Model usual(Constants constants) {
    return new Model(
        constants.range(Constant.MAINTENANCE_KJ),
        constants.value(Constant.MASS_EXPONENT),
        constants.value(Constant.TEMPERATURE_SLOPE),
        constants.value(Constant.REFERENCE_TEMPERATURE_C),
        constants.source(Constant.MAINTENANCE_KJ));
  }

  /** The same line for a tank whose fish are known to need more or less. */
  public Model times(double factor) {
    return new Model(coefficientKj.times(factor), exponent, temperatureSlope, referenceC, source);
  }

  /** Energy relative to the reference temperature. */
  public double temperatureFactor(double temperatureC) {
    return Math.exp(temperatureSlope * (temperatureC - referenceC));
  }

  /** Metabolic mass, BW(kg)^exponent. */
  public double metabolicMass(double grams) {
    return Math.pow(grams / 1000, exponent);
  }
}
