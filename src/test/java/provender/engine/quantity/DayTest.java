package provender.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DayTest {
  @Test
  void every_day_of_four_centuries_is_the_calendars_own() {
    for (LocalDate date = LocalDate.of(1900, 1, 1); date.getYear() < 2300; date = date.plusDays(1)) {
      assertThat(Day.parse(date.toString()).epochDay()).isEqualTo((int) date.toEpochDay());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"2026-11-25T08:10:00+01:00", "2026-11-25T23:59:59.123-11:30", "2026-03-01T00:00Z", "2024-02-29T12:00:00+14:00"})
  void a_moment_is_the_instant_that_its_text_names(String text) {
    OffsetDateTime time = OffsetDateTime.parse(text);
    Moment moment = Moment.parse(text);
    assertThat(moment.instantMinutes() * 60).isEqualTo(time.toEpochSecond() - time.getSecond());
    assertThat(moment.minute()).isEqualTo(time.getHour() * 60 + time.getMinute());
    assertThat(moment.offsetMinutes() * 60).isEqualTo(time.getOffset().getTotalSeconds());
  }

  @Test
  void moments_are_ordered_by_when_they_were_and_not_by_what_the_wall_said() {
    Moment east = Moment.parse("2026-11-25T09:00:00+03:00");
    Moment west = Moment.parse("2026-11-25T08:00:00+01:00");
    assertThat(east).isLessThan(west);
    assertThat(OffsetDateTime.of(2026, 11, 25, 6, 0, 0, 0, ZoneOffset.UTC).toEpochSecond()).isEqualTo((long) (east.instantMinutes() * 60));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "2026", "2026-13-01", "2026-00-10", "2026-01-32", "20261125", "2026/11/25", "abcd-ef-gh"})
  void what_is_no_day_is_refused(String text) {
    assertThatIllegalArgumentException().isThrownBy(() -> Day.parse(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"2026-11-25", "2026-11-25T24:00:00Z", "2026-11-25T08:60:00Z", "2026-11-25T08-10:00+01:00", "2026-11-25T08:10:00*01:00", "2026-11-25T08:10:00+0100", "2026-11-25T08:10:00x"})
  void what_is_no_moment_is_refused(String text) {
    assertThatIllegalArgumentException().isThrownBy(() -> Moment.parse(text));
  }

  @Test
  void days_count_forwards_and_backwards() {
    Day day = Day.parse("2026-03-01");
    assertThat(day.plus(-1)).isEqualTo(Day.parse("2026-02-28"));
    assertThat(day.since(Day.parse("2025-03-01"))).isEqualTo(365);
    assertThat(day.isBefore(day.plus(1))).isTrue();
    assertThat(day.isBefore(day)).isFalse();
  }
}
