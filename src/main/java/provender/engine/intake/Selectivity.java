package provender.engine.intake;

/**
 * What a fish chose from what it was offered, as the usual indices say it (Lechowicz 1982, Oecologia 52:22-30).
 *
 * @param ivlev E, from −1 (never taken) over 0 (as offered) to 1
 * @param jacobs D, like E but not moved by how common a food is
 * @param manly α where food is made up as it is eaten; 1/m for every food means no choice
 * @param scavia E* of Vanderploeg and Scavia, α against 1/m
 * @param manlyDepleted α where what is eaten is not made up
 */
public record Selectivity(double[] ivlev, double[] jacobs, double[] manly, double[] scavia, double[] manlyDepleted) {
  /** A food eaten to the last crumb leaves ln 0; it counts as all but this part of it. */
  private static final double LAST_CRUMB = 1e-6;

  /** Amounts per food, in any one unit; something must have been offered of each and eaten of at least one. */
  public static Selectivity of(double[] offered, double[] eaten) {
    int foods = offered.length;
    double[] r = shares(eaten);
    double[] p = shares(offered);
    double[] ivlev = new double[foods];
    double[] jacobs = new double[foods];
    double[] forage = new double[foods];
    double[] depleted = new double[foods];
    for (int i = 0; i < foods; i++) {
      ivlev[i] = ratio(r[i] - p[i], r[i] + p[i]);
      jacobs[i] = ratio(r[i] - p[i], r[i] + p[i] - 2 * r[i] * p[i]);
      forage[i] = r[i] / p[i];
      depleted[i] = -Math.log(Math.max(LAST_CRUMB, 1 - eaten[i] / offered[i]));
    }
    double[] manly = shares(forage);
    double[] scavia = new double[foods];
    for (int i = 0; i < foods; i++) {
      scavia[i] = (manly[i] - 1.0 / foods) / (manly[i] + 1.0 / foods);
    }
    return new Selectivity(ivlev, jacobs, manly, scavia, shares(depleted));
  }

  private static double[] shares(double[] amounts) {
    double sum = 0;
    for (double amount : amounts) {
      sum += amount;
    }
    double[] shares = new double[amounts.length];
    for (int i = 0; i < amounts.length; i++) {
      shares[i] = amounts[i] / sum;
    }
    return shares;
  }

  private static double ratio(double above, double below) {
    return above == 0 ? 0 : above / below;
  }
}
