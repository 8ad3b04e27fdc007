package provender.store;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.IsoFields;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Which days' copies stay: the last seven, the newest of each of four weeks, the newest of each of twelve months. */
final class Kept {
  private static final int DAYS = 7;
  private static final int WEEKS = 4;
  private static final int MONTHS = 12;

  private Kept() {}

  static List<LocalDate> of(List<LocalDate> days, LocalDate today) {
    List<LocalDate> newestFirst = new ArrayList<>(days);
    newestFirst.sort(Comparator.reverseOrder());
    Set<Integer> weeks = new HashSet<>();
    Set<YearMonth> months = new HashSet<>();
    List<LocalDate> kept = new ArrayList<>();
    for (LocalDate day : newestFirst) {
      int week = day.get(IsoFields.WEEK_BASED_YEAR) * 100 + day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR);
      boolean daily = day.isAfter(today.minusDays(DAYS));
      boolean weekly = weeks.size() < WEEKS && weeks.add(week);
      boolean monthly = months.size() < MONTHS && months.add(YearMonth.from(day));
      if (daily || weekly || monthly) {
        kept.add(day);
      }
    }
    return kept;
  }
}
