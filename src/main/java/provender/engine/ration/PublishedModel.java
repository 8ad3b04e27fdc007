package provender.engine.ration;

/**
 * A published line as its paper gives it: maintenance, and where the paper has them the growth it found, what growth
 * costs, and the protein that goes with both.
 *
 * @param gross whether its energy is gross and not digestible energy
 */
public record PublishedModel(
    String key, Model line, boolean gross, double minC, double maxC, Gain gain, GrowthCost cost, Protein protein) {

  /** Growth as {@code a × W(g)^b × exp(slope × T)}, in grams a day; NaN where the paper has none. */
  public record Gain(double a, double b, double slope) {
    public double gramsPerDay(double grams, double temperatureC) {
      return a * Math.pow(grams, b) * Math.exp(slope * temperatureC);
    }
  }

  /** Protein for maintenance, {@code grams × BW(kg)^exponent}, and per gram gained; NaN where the paper has none. */
  public record Protein(double grams, double exponent, double perGainGrams) {
    public double gramsPerDay(double bodyGrams, double gainGrams) {
      double growth = gainGrams == 0 ? 0 : gainGrams * perGainGrams;
      return grams * Math.pow(bodyGrams / 1000, exponent) + growth;
    }
  }
}
