package provender.engine.today;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import provender.engine.journal.Exchange;
import provender.engine.journal.Feeding;
import provender.engine.journal.WaterTest;
import provender.engine.quantity.Day;
import provender.engine.quantity.Moment;
import provender.engine.quantity.Range;
import provender.engine.source.Constant;
import provender.engine.source.Constants;
import provender.engine.water.Exchanges;
import provender.engine.water.ExportFit;

/** One ion in the water since its first test within reach: what came in, what exchanges took, what the tests say of the rest. */
public final class IonRun {
  private static final double MINUTES_PER_DAY = 1440;

  private final Ion ion;
  private final double volume;
  private final double inputPerDay;
  private final Moment now;
  private final Constants constants;
  private final List<Point> points = new ArrayList<>();
  private final List<Event> events = new ArrayList<>();
  private final Exchanges habit;
  private @Nullable ExportFit fit;

  /** What is followed, and where it stands in a test, in new water and in a feeding (there in mg/L of the whole tank). */
  record Ion(
      String name, ToDoubleFunction<WaterTest> tested, ToDoubleFunction<Exchange> source, ToDoubleFunction<Feeding> brings) {}

  /** A test of this ion. */
  public record Point(Moment at, double mgL) {}

  /** Something that changed the level at once: what came in, and the part of the water that was changed. */
  private record Event(double minutes, double came, double fraction, double source) {}

  IonRun(
      Ion ion, double volume, List<WaterTest> tests, List<Exchange> exchanges, List<Feeding> feedings, double inputPerDay,
      Moment now, Constants constants) {
    this.ion = ion;
    this.volume = volume;
    this.inputPerDay = inputPerDay;
    this.now = now;
    this.constants = constants;
    Day first = now.day().plus((int) -constants.value(Constant.WATER_WINDOW_DAYS));
    for (WaterTest test : tests) {
      double mgL = ion.tested().applyAsDouble(test);
      if (!Double.isNaN(mgL) && !test.at().day().isBefore(first) && test.at().compareTo(now) <= 0) {
        points.add(new Point(test.at(), mgL));
      }
    }
    List<Exchange> recent = new ArrayList<>();
    for (Exchange exchange : exchanges) {
      if (!exchange.at().day().isBefore(first) && exchange.at().compareTo(now) <= 0) {
        recent.add(exchange);
      }
    }
    this.habit = habit(recent, volume, ion);
    if (volume > 0 && !points.isEmpty()) {
      gather(recent, feedings);
      this.fit = isEnough() ? fit(points.size()) : null;
      if (chanceOfLast() < constants.value(Constant.TEST_JUMP_CHANCE)) {
        // A test that does not fit waits for a second one before it moves everything.
        this.fit = fit(points.size() - 1);
      }
    }
  }

  private static Exchanges habit(List<Exchange> exchanges, double volume, Ion ion) {
    int count = exchanges.size();
    if (count < 2 || !(volume > 0)) {
      return new Exchanges(0, 7, 0);
    }
    double litres = 0;
    for (Exchange exchange : exchanges) {
      litres += exchange.litres();
    }
    int span = exchanges.get(count - 1).at().day().since(exchanges.get(0).at().day());
    int every = (int) Math.max(1, Math.floor((double) span / (count - 1) + 0.5));
    double source = ion.source().applyAsDouble(exchanges.get(count - 1));
    return new Exchanges(Math.min(1, litres / count / volume), every, source);
  }

  private void gather(List<Exchange> exchanges, List<Feeding> feedings) {
    for (Feeding feeding : feedings) {
      events.add(new Event(feeding.at().instantMinutes(), ion.brings().applyAsDouble(feeding), 0, 0));
    }
    for (Exchange exchange : exchanges) {
      double fraction = Math.min(1, exchange.litres() / volume);
      events.add(new Event(exchange.at().instantMinutes(), 0, fraction, ion.source().applyAsDouble(exchange)));
    }
    events.sort((one, other) -> Double.compare(one.minutes(), other.minutes()));
  }

  /** Tests enough for a fit that means something: the fewest, and not all of one day. */
  private boolean isEnough() {
    boolean manyDays = !points.get(0).at().day().equals(points.get(points.size() - 1).at().day());
    return manyDays && points.size() >= constants.value(Constant.FEWEST_WATER_TESTS);
  }

  private ExportFit fit(int count) {
    ExportFit.Reading[] readings = new ExportFit.Reading[count];
    double[] measured = new double[count];
    for (int i = 0; i < count; i++) {
      readings[i] = reading(points.get(i).at().instantMinutes());
      measured[i] = points.get(i).mgL();
    }
    return ExportFit.of(readings, measured, constants.value(Constant.WATER_CONFIDENCE));
  }

  /** What feeding and exchanges have done from the first test up to a time; beyond now, as they have been lately. */
  private ExportFit.Reading reading(double minutes) {
    double begun = points.get(0).at().instantMinutes();
    double kept = 1;
    double known = 0;
    double days = 0;
    double last = begun;
    for (Event event : events) {
      if (event.minutes() > begun && event.minutes() <= Math.min(minutes, now.instantMinutes())) {
        days += (event.minutes() - last) / MINUTES_PER_DAY;
        last = event.minutes();
        kept *= 1 - event.fraction();
        days *= 1 - event.fraction();
        known = (1 - event.fraction()) * known + event.fraction() * event.source() + event.came();
      }
    }
    double upToNow = Math.min(minutes, now.instantMinutes());
    days += Math.max(0, upToNow - last) / MINUTES_PER_DAY;
    return minutes <= now.instantMinutes()
        ? new ExportFit.Reading(kept, known, days)
        : ahead(new ExportFit.Reading(kept, known, days), (minutes - now.instantMinutes()) / MINUTES_PER_DAY);
  }

  private ExportFit.Reading ahead(ExportFit.Reading today, double daysAhead) {
    double kept = today.kept();
    double known = today.known();
    double days = today.days();
    for (int day = 1; day <= daysAhead; day++) {
      known += inputPerDay;
      days += 1;
      if (habit.fraction() > 0 && day % habit.everyDays() == 0) {
        kept *= 1 - habit.fraction();
        days *= 1 - habit.fraction();
        known = (1 - habit.fraction()) * known + habit.fraction() * habit.source();
      }
    }
    return new ExportFit.Reading(kept, known, days);
  }

  public String name() {
    return ion.name();
  }

  /** What a usual day's food brings, in mg/L. */
  public double inputPerDay() {
    return inputPerDay;
  }

  public List<Point> points() {
    return points;
  }

  /** Null while there are too few tests. */
  public @Nullable ExportFit fit() {
    return fit;
  }

  public Exchanges habit() {
    return habit;
  }

  /** The level at the end of a day, before or after today, never below nothing; null without a fit, or before the first test. */
  public @Nullable Range level(Day day) {
    if (fit == null || day.isBefore(points.get(0).at().day())) {
      return null;
    }
    double minutes = new Moment(day, (int) MINUTES_PER_DAY - 1, now.offsetMinutes()).instantMinutes();
    return fit.level(reading(Math.max(minutes, points.get(0).at().instantMinutes()))).atLeastZero();
  }

  /**
   * How often the last test would lie so far from those before it by chance alone; NaN while those before are too few to
   * say.
   */
  public double chanceOfLast() {
    int before = points.size() - 1;
    boolean enough = before >= constants.value(Constant.FEWEST_WATER_TESTS)
        && !points.get(0).at().day().equals(points.get(before - 1).at().day());
    if (fit == null || !enough) {
      return Double.NaN;
    }
    Point last = points.get(before);
    return fit(before).chance(reading(last.at().instantMinutes()), last.mgL());
  }

  /** What the tests before the last would have made one expect of it. */
  public Range expectedOfLast() {
    int before = points.size() - 1;
    return fit(before).test(reading(points.get(before).at().instantMinutes())).atLeastZero();
  }
}
