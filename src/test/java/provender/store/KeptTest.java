package provender.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class KeptTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

  @Test
  void of_three_years_of_daily_copies_a_week_four_weeks_and_twelve_months_stay() {
    List<LocalDate> days = new ArrayList<>();
    List<LocalDate> kept = new ArrayList<>();
    for (LocalDate day = TODAY.minusYears(3); !day.isAfter(TODAY); day = day.plusDays(1)) {
      days.add(day);
      kept = Kept.of(days, day);
      days = new ArrayList<>(kept);
    }
    assertThat(kept).contains(TODAY, TODAY.minusDays(6));
    assertThat(kept.stream().filter(day -> day.isAfter(TODAY.minusDays(7)))).hasSize(7);
    assertThat(kept).hasSizeBetween(18, 23);
    assertThat(kept.stream().min(LocalDate::compareTo).orElseThrow()).isBefore(TODAY.minusDays(300));
  }

  @Test
  void a_single_copy_stays_however_old_it_is() {
    assertThat(Kept.of(List.of(TODAY.minusYears(5)), TODAY)).containsExactly(TODAY.minusYears(5));
  }
}
