package provender.engine.today;

import java.util.ArrayList;
import java.util.List;
import provender.engine.diet.Finding;
import provender.engine.journal.WaterTest;
import provender.engine.quantity.Day;
import provender.engine.quantity.Range;
import provender.engine.reference.Reference;
import provender.engine.source.Constant;
import provender.engine.source.Constants;
import provender.engine.source.Step;

/** The rules the water is held against: one method each, named for what it asks. None of them doses anything. */
final class WaterRules {
  private static final int WEEK = 7;
  private static final int FOUR_WEEKS = 28;

  private final Reference reference;
  private final Constants constants;
  private final Day today;

  WaterRules(Reference reference, Day today) {
    this.reference = reference;
    this.constants = reference.constants();
    this.today = today;
  }

  List<Finding> findings(WaterSide water) {
    List<Finding> findings = new ArrayList<>();
    ammoniaDoesNotShow(water, findings);
    whatComesInGoesOut(water.nitrate(), water.wantedNitrate(), findings);
    whatComesInGoesOut(water.phosphate(), water.wantedPhosphate(), findings);
    testsFollowOnEachOther(water.nitrate(), findings);
    testsFollowOnEachOther(water.phosphate(), findings);
    testedWaterHasAVolume(water, findings);
    return findings;
  }

  private void ammoniaDoesNotShow(WaterSide water, List<Finding> findings) {
    WaterTest last = null;
    for (WaterTest test : water.tests()) {
      boolean recent = !test.at().day().isBefore(today.plus(-WEEK)) && !today.isBefore(test.at().day());
      if (!Double.isNaN(test.ammoniaMgL()) && recent) {
        last = test;
      }
    }
    if (last != null && last.ammoniaMgL() >= constants.value(Constant.AMMONIA_SHOWS)) {
      Step why =
          Step.of(
              "ammoniaTested", "test ≥ what a kit can tell from none", last.ammoniaMgL(), "mg/L", Step.ENTERED,
              constants.input(Constant.AMMONIA_SHOWS));
      List<Step.Input> facts = List.of(Step.input("mgL", last.ammoniaMgL(), "mg/L"));
      findings.add(finding("ammonia", last.at().day(), facts, why));
    }
  }

  /** In four weeks of the same feeding and exchanges even the low end lies above what is wanted. */
  private void whatComesInGoesOut(IonRun run, double wanted, List<Finding> findings) {
    Range now = run.level(today);
    Range then = run.level(today.plus(FOUR_WEEKS));
    if (run.fit() == null || now == null || then == null || !(then.low() > wanted)) {
      return;
    }
    Range export = run.fit().export();
    Step why =
        Step.of(
            "levelAhead",
            "level + (input − export) × days, exchanges as lately",
            then.value(),
            "mg/L",
            Step.PRACTICE,
            Step.input("input", run.inputPerDay(), "mg/L/d"),
            Step.input("export", export.value(), "mg/L/d"),
            Step.input("exchangeFraction", run.habit().fraction(), "1"),
            Step.input("exchangeEvery", run.habit().everyDays(), "d"),
            Step.input("wanted", wanted, "mg/L"));
    List<Step.Input> facts =
        List.of(
            Step.input("now", now.value(), "mg/L"),
            Step.input("then", then.value(), "mg/L"),
            Step.input("wanted", wanted, "mg/L"),
            Step.input("input", run.inputPerDay(), "mg/L/d"),
            Step.input("export", export.value(), "mg/L/d"));
    findings.add(finding(run.name() + "-rises", run.points().get(0).at().day(), facts, why));
  }

  private void testsFollowOnEachOther(IonRun run, List<Finding> findings) {
    double chance = run.chanceOfLast();
    if (!(chance < constants.value(Constant.TEST_JUMP_CHANCE))) {
      return;
    }
    IonRun.Point last = run.points().get(run.points().size() - 1);
    if (last.at().day().isBefore(today.plus(-WEEK))) {
      return;
    }
    Range expected = run.expectedOfLast();
    Step why =
        Step.of(
            "testChance",
            "|test − expected| / spread, Student's t",
            chance,
            "1",
            "nist_mean_interval",
            Step.input("test", last.mgL(), "mg/L"),
            Step.input("expectedLow", expected.low(), "mg/L"),
            Step.input("expectedHigh", expected.high(), "mg/L"),
            constants.input(Constant.TEST_JUMP_CHANCE));
    List<Step.Input> facts =
        List.of(
            Step.input("mgL", last.mgL(), "mg/L"),
            Step.input("low", expected.low(), "mg/L"),
            Step.input("high", expected.high(), "mg/L"));
    findings.add(finding(run.name() + "-jump", last.at().day(), facts, why));
  }

  private void testedWaterHasAVolume(WaterSide water, List<Finding> findings) {
    if (!water.knowsVolume() && !water.nitrate().points().isEmpty()) {
      Step why = Step.of("volume", "", 0, "L", Step.ENTERED);
      findings.add(finding("no-volume", water.nitrate().points().get(0).at().day(), List.of(), why));
    }
  }

  private Finding finding(String key, Day since, List<Step.Input> facts, Step why) {
    return new Finding(
        reference.rule(key), List.of(), null, null, since, today.since(since), List.of(), facts, List.of(why));
  }
}
