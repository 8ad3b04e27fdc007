package provender.engine.today;

import java.util.List;
import provender.engine.journal.Tank;
import provender.engine.journal.WaterTest;
import provender.engine.quantity.Day;
import provender.engine.quantity.Range;
import provender.engine.source.Basis;
import provender.engine.source.Constant;
import provender.engine.source.Constants;
import provender.engine.source.Figure;
import provender.engine.source.Step;

/** The temperature of a tank's water: as last tested, else as set up, else assumed. */
public final class Warmth {
  private final Tank tank;
  private final List<WaterTest> tests;
  private final Constants constants;

  Warmth(Tank tank, List<WaterTest> tests, Constants constants) {
    this.tank = tank;
    this.tests = tests;
    this.constants = constants;
  }

  /** Which part of the model's range a temperature falls in. */
  public enum Flag {
    IN_RANGE("inRange"),
    OUTSIDE_MODEL("outsideModel"),
    ALARM("alarm");

    private final String key;

    Flag(String key) {
      this.key = key;
    }

    public String key() {
      return key;
    }
  }

  Flag flag(double celsius) {
    if (celsius > constants.value(Constant.ALARM_C)) {
      return Flag.ALARM;
    }
    boolean inside =
        celsius >= constants.value(Constant.MODEL_MIN_C) && celsius <= constants.value(Constant.MODEL_MAX_C);
    return inside ? Flag.IN_RANGE : Flag.OUTSIDE_MODEL;
  }

  Figure on(Day day) {
    double tested = tested(day);
    if (!Double.isNaN(tested)) {
      return figure(tested, Basis.MEASURED, "temperatureTested", Step.ENTERED);
    }
    if (!Double.isNaN(tank.temperatureC())) {
      return figure(tank.temperatureC(), Basis.MEASURED, "temperatureSetUp", Step.ENTERED);
    }
    return figure(
        constants.value(Constant.FALLBACK_TEMPERATURE_C),
        Basis.ASSUMED,
        "temperatureAssumed",
        constants.source(Constant.FALLBACK_TEMPERATURE_C));
  }

  /** One per day, oldest first; what lies above the alarm is reckoned at the alarm, never beyond the model. */
  double[] over(Day first, int days) {
    double[] celsius = new double[days];
    for (int day = 0; day < days; day++) {
      celsius[day] = reckonedWith(on(first.plus(day)).value());
    }
    return celsius;
  }

  double reckonedWith(double celsius) {
    return Math.min(celsius, constants.value(Constant.ALARM_C));
  }

  private double tested(Day day) {
    double last = Double.NaN;
    for (WaterTest test : tests) {
      if (test.at().day().epochDay() <= day.epochDay() && !Double.isNaN(test.temperatureC())) {
        last = test.temperatureC();
      }
    }
    return last;
  }

  private static Figure figure(double celsius, Basis basis, String what, String source) {
    return Figure.of(Range.exactly(celsius), basis, Step.of(what, "", celsius, "°C", source));
  }
}
