package provender.engine.intake;

import java.util.Arrays;

/** A quantity of one food split among eaters in proportion to their weights, none above its cap. */
public final class MealShares {
  private final double[] grams;
  private final double leftover;

  private MealShares(double[] grams, double leftover) {
    this.grams = grams;
    this.leftover = leftover;
  }

  /**
   * Shares in proportion; whoever reaches the cap keeps the cap, and what it could not take is shared again among the
   * others until nothing is left or nobody can take more.
   *
   * @param grams what is there, in grams
   * @param weights one per eater, zero for one that eats none of it
   * @param capGrams the most each can take, in grams
   */
  public static MealShares split(double grams, double[] weights, double[] capGrams) {
    return split(grams, weights, capGrams, new double[weights.length]);
  }

  /** @param taken the shares are written into it, whatever it held before */
  static MealShares split(double grams, double[] weights, double[] capGrams, double[] taken) {
    Arrays.fill(taken, 0);
    if (fits(grams, weights, capGrams, taken)) {
      return new MealShares(taken, 0);
    }
    boolean[] full = new boolean[weights.length];
    double left = grams;
    boolean someoneFilled = true;
    while (left > 0 && someoneFilled) {
      double hungry = hungryWeight(weights, full);
      someoneFilled = false;
      if (hungry <= 0) {
        break;
      }
      double perWeight = left / hungry;
      for (int i = 0; i < weights.length; i++) {
        if (!full[i] && weights[i] > 0 && weights[i] * perWeight >= capGrams[i] - taken[i]) {
          left -= capGrams[i] - taken[i];
          taken[i] = capGrams[i];
          full[i] = true;
          someoneFilled = true;
        }
      }
      if (!someoneFilled) {
        for (int i = 0; i < weights.length; i++) {
          if (!full[i]) {
            taken[i] += weights[i] * perWeight;
          }
        }
        left = 0;
      }
    }
    return new MealShares(taken, Math.max(0, left));
  }

  /** Most meals fill nobody: then everyone's part is taken as it comes. */
  private static boolean fits(double grams, double[] weights, double[] capGrams, double[] taken) {
    double hungry = 0;
    for (double weight : weights) {
      hungry += weight;
    }
    if (grams <= 0 || hungry <= 0) {
      return false;
    }
    double perWeight = grams / hungry;
    for (int i = 0; i < weights.length; i++) {
      double part = weights[i] * perWeight;
      if (part > capGrams[i]) {
        Arrays.fill(taken, 0);
        return false;
      }
      taken[i] = part;
    }
    return true;
  }

  public double grams(int eater) {
    return grams[eater];
  }

  public double leftoverGrams() {
    return leftover;
  }

  private static double hungryWeight(double[] weights, boolean[] full) {
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      if (!full[i]) {
        sum += weights[i];
      }
    }
    return sum;
  }
}
