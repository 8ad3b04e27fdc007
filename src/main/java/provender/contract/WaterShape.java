package provender.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import provender.engine.journal.Exchange;
import provender.engine.journal.WaterTest;
import provender.engine.quantity.Day;
import provender.engine.quantity.Range;
import provender.engine.source.Basis;
import provender.engine.source.Constant;
import provender.engine.source.Constants;
import provender.engine.source.Figure;
import provender.engine.source.Step;
import provender.engine.today.IonRun;
import provender.engine.today.Today;
import provender.engine.today.WaterSide;
import provender.engine.water.ExportFit;
import provender.engine.water.Exchanges;
import provender.engine.water.Ions;

/** The water's side of a tank as JSON. */
final class WaterShape {
  private static final int BACK_DAYS = 92;
  private static final int AHEAD_DAYS = 28;
  private static final int SHOWN_TESTS = 20;

  private WaterShape() {}

  static Map<String, Object> of(Today today) {
    WaterSide water = today.water();
    return Shapes.object(
        "day", (double) today.now().day().epochDay(),
        "volumeLitres", water.volumeLitres(),
        "hand", feed(water.byHand()),
        "feeders", feed(water.byFeeders()),
        "dueKj", today.due().value(),
        "factors", factors(today.reference().constants()),
        "habit", habit(water.habit()),
        "ions",
            List.of(
                ion(water.nitrate(), water.wantedNitrate(), water, today),
                ion(water.phosphate(), water.wantedPhosphate(), water, today)),
        "fewestTests", today.reference().constants().value(Constant.FEWEST_WATER_TESTS),
        "tests", tests(water.tests()),
        "exchanges", exchanges(water.exchanges()),
        "dosings", (double) water.dosings().size());
  }

  /** As the calculation of nutrients takes it. */
  private static Map<String, Object> feed(WaterSide.Daily daily) {
    double grams = daily.grams() > 0 ? daily.grams() : 1;
    return Shapes.object(
        "gramsPerDay", daily.grams(), "proteinFraction", daily.protein() / grams, "phosphorusFraction", daily.phosphorus() / grams);
  }

  /** What turns the units of kits into those of the journal. */
  private static Map<String, Object> factors(Constants constants) {
    Ions ions = Ions.of(constants);
    double carbonatePerDkh = constants.value(Constant.CARBONATE_MG_PER_DKH);
    return Shapes.object(
        "nitratePerNitrogen", ions.nitratePerNitrogen(),
        "phosphatePerPhosphorus", ions.phosphatePerPhosphorus(),
        "dkhPerMgL", 1 / carbonatePerDkh,
        "dkhPerMeq", ions.carbonateEquivalent() / carbonatePerDkh);
  }

  private static Map<String, Object> habit(Exchanges habit) {
    return Shapes.object("fraction", habit.fraction(), "everyDays", (double) habit.everyDays());
  }

  private static Map<String, Object> ion(IonRun run, double wanted, WaterSide water, Today today) {
    ExportFit fit = run.fit();
    Day now = today.now().day();
    return Shapes.object(
        "ion", run.name(),
        "wantedMgL", wanted,
        "wished", water.isWished(),
        "inputMgLPerDay", water.knowsVolume() ? Shapes.figure(input(run, water, today)) : null,
        "export", fit == null ? null : Shapes.figure(export(fit)),
        "now", range(run.level(now)),
        "inFourWeeks", range(run.level(now.plus(AHEAD_DAYS))),
        "points", points(run),
        "series", series(run, now));
  }

  private static Figure input(IonRun run, WaterSide water, Today today) {
    boolean nitrate = run.name().equals("nitrate");
    double grams =
        nitrate
            ? water.byHand().protein() + water.byFeeders().protein()
            : water.byHand().phosphorus() + water.byFeeders().phosphorus();
    String source = today.reference().constants().source(nitrate ? Constant.PROTEIN_PER_NITROGEN : Constant.ATOMIC_P);
    Step step =
        nitrate
            ? Step.of(
                "nitrateRise", "protein / 6.25 × NO₃/N × 1000 / volume", run.inputPerDay(), "mg/L/d",
                source, Step.input("protein", grams, "g/d"), Step.input("volume", water.volumeLitres(), "L"))
            : Step.of(
                "phosphateRise", "P × PO₄/P × 1000 / volume", run.inputPerDay(), "mg/L/d", source,
                Step.input("phosphorus", grams, "g/d"), Step.input("volume", water.volumeLitres(), "L"));
    return Figure.of(Range.exactly(run.inputPerDay()), Basis.ESTIMATED, step);
  }

  private static Figure export(ExportFit fit) {
    Step step =
        Step.of(
            "exportFit",
            "least squares over the tests: level = start × kept + input − export × days",
            fit.export().value(),
            "mg/L/d",
            "nist_mean_interval",
            Step.input("tests", fit.tests(), ""),
            Step.input("scatter", fit.scatter(), "mg/L"));
    return Figure.of(fit.export(), Basis.ESTIMATED, step);
  }

  private static @Nullable Object range(@Nullable Range range) {
    return range == null ? null : Shapes.range(range);
  }

  private static List<Object> points(IonRun run) {
    List<Object> points = new ArrayList<>();
    for (IonRun.Point point : run.points()) {
      points.add(Shapes.object("day", (double) point.at().day().epochDay(), "mgL", point.mgL()));
    }
    return points;
  }

  private static List<Object> series(IonRun run, Day now) {
    List<Object> series = new ArrayList<>();
    for (int day = -BACK_DAYS; day <= AHEAD_DAYS; day++) {
      Range level = run.level(now.plus(day));
      if (level != null) {
        series.add(
            Shapes.object(
                "day", (double) now.plus(day).epochDay(), "low", level.low(), "value", level.value(), "high", level.high()));
      }
    }
    return series;
  }

  /** The last ones, newest first. */
  private static List<Object> tests(List<WaterTest> tests) {
    List<Object> list = new ArrayList<>();
    for (int i = tests.size() - 1; i >= 0 && list.size() < SHOWN_TESTS; i--) {
      WaterTest test = tests.get(i);
      list.add(
          Shapes.object(
              "day", (double) test.at().day().epochDay(),
              "minute", (double) test.at().minute(),
              "temperatureC", test.temperatureC(),
              "nitrateMgL", test.nitrateMgL(),
              "phosphateMgL", test.phosphateMgL(),
              "ammoniaMgL", test.ammoniaMgL(),
              "alkalinityDkh", test.alkalinityDkh(),
              "salinityPpt", test.salinityPpt()));
    }
    return list;
  }

  private static List<Object> exchanges(List<Exchange> exchanges) {
    List<Object> list = new ArrayList<>();
    for (int i = exchanges.size() - 1; i >= 0 && list.size() < SHOWN_TESTS; i--) {
      Exchange exchange = exchanges.get(i);
      list.add(Shapes.object("day", (double) exchange.at().day().epochDay(), "litres", exchange.litres()));
    }
    return list;
  }
}
