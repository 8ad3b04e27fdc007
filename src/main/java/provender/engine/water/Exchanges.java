package provender.engine.water;

/**
 * Water changed at regular intervals.
 *
 * @param fraction of the tank's water, 0 to 1
 * @param everyDays whole days between two
 * @param source what the new water brings, in mg/L
 */
public record Exchanges(double fraction, int everyDays, double source) {

  /**
   * Just before an exchange when all has settled; infinite when nothing takes out what comes in.
   *
   * @param rate in mg/L a day, input less steady export
   * @param removal part of what is there that goes in a day
   */
  public double steadyPeak(double rate, double removal) {
    double kept = Math.exp(-removal * everyDays);
    double cameIn = removal > 0 ? rate / removal * (1 - kept) : rate * everyDays;
    double leaves = 1 - (1 - fraction) * kept;
    if (leaves <= 0) {
      return rate > 0 ? Double.POSITIVE_INFINITY : 0;
    }
    return Math.max(0, (cameIn + fraction * kept * source) / leaves);
  }

  /** Just after it. */
  public double steadyTrough(double peak) {
    return (1 - fraction) * peak + fraction * source;
  }

  /** The fraction that holds the peak at a wanted value without other removal; above 1 when no exchange can. */
  public double fractionFor(double peak, double rate) {
    if (rate <= 0) {
      return 0;
    }
    return peak > source ? rate * everyDays / (peak - source) : Double.POSITIVE_INFINITY;
  }
}
