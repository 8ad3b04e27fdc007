package provender.engine.quantity;

/** A time as the clock on the wall showed it: the local day, the minute of that day, and how far the zone was from UTC. */
public record Moment(Day day, int minute, int offsetMinutes) implements Comparable<Moment> {

  /** Reads {@code 2026-11-25T08:10:00+01:00}; seconds and their fractions may be there, {@code Z} means UTC. */
  public static Moment parse(String text) {
    Day day = Day.parse(text);
    if (text.length() < 17 || text.charAt(10) != 'T' || text.charAt(13) != ':') {
      throw new IllegalArgumentException("a time is written 2026-11-25T08:10:00+01:00");
    }
    int hour = Day.digits(text, 11, 13);
    int minute = Day.digits(text, 14, 16);
    if (hour > 23 || minute > 59) {
      throw new IllegalArgumentException("a time is written 2026-11-25T08:10:00+01:00");
    }
    return new Moment(day, hour * 60 + minute, offset(text));
  }

  /** Minutes since 1970-01-01 00:00 UTC, as a double because whole numbers of that size are slow in browsers. */
  public double instantMinutes() {
    return day.epochDay() * 1440.0 + minute - offsetMinutes;
  }

  @Override
  public int compareTo(Moment other) {
    return Double.compare(instantMinutes(), other.instantMinutes());
  }

  private static int offset(String text) {
    int end = text.length();
    if (text.charAt(end - 1) == 'Z') {
      return 0;
    }
    int sign = text.charAt(end - 6);
    if (text.charAt(end - 3) != ':' || (sign != '+' && sign != '-')) {
      throw new IllegalArgumentException("a time ends with its offset from UTC, such as +01:00 or Z");
    }
    int minutes = Day.digits(text, end - 5, end - 3) * 60 + Day.digits(text, end - 2, end);
    return sign == '+' ? minutes : -minutes;
  }
}
