package provender.engine.fish;

/**
 * Growth along a von Bertalanffy curve, L = Linf (1 − exp(−K (t − t0))), with the mass that goes with each length.
 *
 * @param longestCm Linf
 * @param perYear K
 */
public record Growth(double longestCm, double perYear, double t0Years, double a, double b) {
  private static final double DAYS_PER_YEAR = 365;

  /** The age at which the curve passes through a length, in years. */
  public double ageYears(double lengthCm) {
    return t0Years - Math.log(1 - lengthCm / longestCm) / perYear;
  }

  public double lengthAtCm(double years) {
    return longestCm * (1 - Math.exp(-perYear * (years - t0Years)));
  }

  /** The length some days after it was {@code lengthCm}; the curve needs no age for that. */
  public double lengthAfterCm(double lengthCm, double days) {
    return longestCm - (longestCm - lengthCm) * Math.exp(-perYear * days / DAYS_PER_YEAR);
  }

  public double grams(double lengthCm) {
    return a * Math.pow(lengthCm, b);
  }
}
