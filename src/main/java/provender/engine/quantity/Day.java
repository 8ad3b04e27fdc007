package provender.engine.quantity;

/** A calendar day, counted from 1970-01-01 in the keeper's own calendar. */
public record Day(int epochDay) implements Comparable<Day> {

  public static Day of(int epochDay) {
    return new Day(epochDay);
  }

  /** Reads the day at the front of {@code 2026-11-25} or {@code 2026-11-25T08:10:00+01:00}. */
  public static Day parse(String text) {
    if (text.length() < 10 || text.charAt(4) != '-' || text.charAt(7) != '-') {
      throw new IllegalArgumentException("a day is written 2026-11-25");
    }
    int month = digits(text, 5, 7);
    int day = digits(text, 8, 10);
    if (month < 1 || month > 12 || day < 1 || day > 31) {
      throw new IllegalArgumentException("a day is written 2026-11-25");
    }
    return new Day(fromCivil(digits(text, 0, 4), month, day));
  }

  public Day plus(int days) {
    return new Day(epochDay + days);
  }

  public int since(Day earlier) {
    return epochDay - earlier.epochDay;
  }

  public boolean isBefore(Day other) {
    return epochDay < other.epochDay;
  }

  @Override
  public int compareTo(Day other) {
    return Integer.compare(epochDay, other.epochDay);
  }

  static int digits(String text, int from, int to) {
    int number = 0;
    for (int i = from; i < to; i++) {
      int digit = text.charAt(i) - '0';
      if (digit < 0 || digit > 9) {
        throw new IllegalArgumentException("a time is written 2026-11-25T08:10:00+01:00");
      }
      number = number * 10 + digit;
    }
    return number;
  }

  /** Days from 1970-01-01 in the Gregorian calendar; years start in March, so the leap day falls at the end. */
  private static int fromCivil(int year, int month, int day) {
    int fromMarch = month > 2 ? month - 3 : month + 9;
    int y = month > 2 ? year : year - 1;
    int dayOfYear = (153 * fromMarch + 2) / 5 + day - 1;
    return 365 * y + y / 4 - y / 100 + y / 400 + dayOfYear - 719468;
  }
}
