package provender.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;

/** Turns the demo's days, counted from the day it is first started, into real ones at the tank. */
record DemoClock(Instant start, ZoneId zone) {

  /** {@code "-118 08:10"}: so many days before the first one, at that local time. */
  OffsetDateTime at(String dayAndTime) {
    int space = dayAndTime.indexOf(' ');
    LocalTime time = LocalTime.parse(dayAndTime.substring(space + 1));
    return day(dayAndTime.substring(0, space)).atTime(time).atZone(zone).toOffsetDateTime();
  }

  LocalDate day(String offset) {
    return LocalDate.ofInstant(start, zone).plusDays(Integer.parseInt(offset));
  }

  boolean isToCome(OffsetDateTime time) {
    return time.toInstant().isAfter(start);
  }
}
