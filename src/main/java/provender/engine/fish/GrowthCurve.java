package provender.engine.fish;

import provender.engine.quantity.Range;

/**
 * How a species is known to grow: von Bertalanffy's curve, whose rate is one fish's in the wild. What a display fish gains
 * lies between nothing and that.
 *
 * @param longestCm Linf, measured as the species' length-weight relation has it
 * @param perYear K
 */
public record GrowthCurve(double longestCm, double perYear, String source) {

  /** The length some days later; a fish longer than the curve ever gets stays as it is. */
  double lengthAfterCm(LengthWeight relation, double lengthCm, double days) {
    return lengthCm < longestCm && days > 0 ? growth(relation).lengthAfterCm(lengthCm, days) : lengthCm;
  }

  /** What a fish of that length gains in a day, in grams: at least nothing, at most as in the wild. */
  Range gainGrams(LengthWeight relation, double lengthCm) {
    double gain = relation.grams(lengthAfterCm(relation, lengthCm, 1)) - relation.grams(lengthCm);
    return new Range(0, gain, gain);
  }

  private Growth growth(LengthWeight relation) {
    return new Growth(longestCm, perYear, 0, relation.a(), relation.b());
  }
}
