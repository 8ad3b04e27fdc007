package provender.engine.water;

/** How one concentration runs, day by day, in mg/L. */
public final class Course {
  private Course() {}

  /** One day further: what comes in less what is taken out at a steady rate, and a part that is removed of what is there. */
  public static double next(double concentration, double rate, double removal) {
    double kept = Math.exp(-removal);
    double came = removal > 0 ? rate * (1 - kept) / removal : rate;
    return Math.max(0, concentration * kept + came);
  }

  /** After an exchange. */
  public static double exchanged(double concentration, double fraction, double source) {
    return (1 - fraction) * concentration + fraction * source;
  }

  /** The end of each of some days, the first exchange after {@code everyDays}; an exchange shows on the day after it. */
  public static double[] over(int days, double start, double rate, double removal, Exchanges exchanges) {
    double[] course = new double[days];
    double now = start;
    for (int day = 0; day < days; day++) {
      now = next(now, rate, removal);
      course[day] = now;
      if ((day + 1) % exchanges.everyDays() == 0) {
        now = exchanged(now, exchanges.fraction(), exchanges.source());
      }
    }
    return course;
  }
}
