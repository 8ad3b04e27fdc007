package provender.engine.food;

/**
 * The proximate composition of a food, in grams per 100 g as fed; carbohydrate contains the fibre.
 *
 * @param phosphorusMg NaN where nobody knows
 */
public record Composition(
    double waterGrams,
    double proteinGrams,
    double fatGrams,
    double carbohydrateGrams,
    double fibreGrams,
    double ashGrams,
    double phosphorusMg) {

  public Composition(double water, double protein, double fat, double carbohydrate, double fibre, double ash) {
    this(water, protein, fat, carbohydrate, fibre, ash, Double.NaN);
  }

  /** Carbohydrate as what the rest leaves of 100 g, fibre included; nothing when the rest already fills it. */
  public static Composition byDifference(double water, double protein, double fat, double fibre, double ash) {
    double rest = 100 - water - protein - fat - ash;
    return new Composition(water, protein, fat, Math.max(0, rest), fibre, ash);
  }

  /** Nitrogen-free extract: carbohydrate without fibre. */
  public double nfeGrams() {
    return Math.max(0, carbohydrateGrams - fibreGrams);
  }

  public double sumGrams() {
    return waterGrams + proteinGrams + fatGrams + carbohydrateGrams + ashGrams;
  }

  public double dryFraction() {
    return (100 - waterGrams) / 100;
  }
}
