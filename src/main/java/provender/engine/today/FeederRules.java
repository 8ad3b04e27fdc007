package provender.engine.today;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.engine.diet.Finding;
import provender.engine.feeder.AutoFeeder;
import provender.engine.feeder.Reconciled;
import provender.engine.feeder.Reconciled.Verdict;
import provender.engine.quantity.Day;
import provender.engine.quantity.Range;
import provender.engine.reference.DietRule;
import provender.engine.reference.Reference;
import provender.engine.source.Constant;
import provender.engine.source.Constants;
import provender.engine.source.Step;

/** The rules auto-feeders are held against: one method each, named for what it asks. */
final class FeederRules {
  private final Reference reference;
  private final Constants constants;
  private final Day today;

  FeederRules(Reference reference, Day today) {
    this.reference = reference;
    this.constants = reference.constants();
    this.today = today;
  }

  List<Finding> findings(List<FeederToday> feeders) {
    List<Finding> findings = new ArrayList<>();
    for (FeederToday one : feeders) {
      addIfAny(findings, whatLeftTheHopperIsWhatWasMeantToFall(one));
      addIfAny(findings, theHopperLastsOverTheNextDays(one));
      addIfAny(findings, aRunningFeederWasWeighed(one));
    }
    return findings;
  }

  private static void addIfAny(List<Finding> findings, @Nullable Finding finding) {
    if (finding != null) {
      findings.add(finding);
    }
  }

  private @Nullable Finding whatLeftTheHopperIsWhatWasMeantToFall(FeederToday one) {
    Reconciled found = one.found();
    if (found == null) {
      return null;
    }
    double alarm = constants.value(Constant.FEEDER_ALARM_CHANCE);
    Verdict verdict = found.verdict(alarm, constants.value(Constant.FEEDER_JAM_RATIO));
    if (verdict == Verdict.AS_EXPECTED) {
      return null;
    }
    List<AutoFeeder.Fill> fills = one.feeder().fills();
    AutoFeeder.Weighing weighing = one.weighing();
    Day looked = fills.get(fills.size() - 1).at().day();
    if (verdict == Verdict.DRIFT && weighing != null && looked.isBefore(weighing.at().day())) {
      return null; // Weighed again since: whatever it drifted to is known.
    }
    Step why =
        Step.of(
            "feederUsed",
            "|used − k m| / (s √(k + k²/n)), Student's t",
            found.chance(),
            "1",
            "nist_mean_interval",
            Step.input("used", found.used(), "g"),
            Step.input("expected", found.expected().value(), "g"),
            Step.input("expectedLow", found.expected().low(), "g"),
            Step.input("expectedHigh", found.expected().high(), "g"),
            constants.input(Constant.FEEDER_ALARM_CHANCE));
    List<Step.Input> facts =
        List.of(
            Step.input("percent", 100 * found.ratio(), "%"),
            Step.input("usedGrams", found.used(), "g"),
            Step.input("expectedGrams", found.expected().value(), "g"),
            Step.input("chancePercent", 100 * found.chance(), "%"));
    String rule = verdict == Verdict.JAM ? "feeder-jam" : "feeder-drift";
    return finding(rule, one, fills.get(fills.size() - 2).at().day(), facts, why);
  }

  private @Nullable Finding theHopperLastsOverTheNextDays(FeederToday one) {
    Range days = one.days();
    double warn = constants.value(Constant.HOPPER_WARN_DAYS);
    if (days == null || days.low() >= warn) {
      return null;
    }
    Step why =
        Step.of(
            "hopperDays",
            "drops until the hopper is empty / drops a day",
            days.low(),
            "d",
            "nist_mean_interval",
            Step.input("daysExpected", days.value(), "d"),
            constants.input(Constant.HOPPER_WARN_DAYS));
    List<Step.Input> facts =
        List.of(Step.input("daysLow", Math.floor(days.low()), "d"), Step.input("daysExpected", Math.floor(days.value()), "d"));
    return finding("hopper-low", one, today, facts, why);
  }

  private @Nullable Finding aRunningFeederWasWeighed(FeederToday one) {
    AutoFeeder.Setting setting = one.setting();
    if (setting == null || !setting.running() || one.weighing() != null) {
      return null;
    }
    Step why = Step.of("feederDay", "", setting.dropsPerDay(), "", Step.ENTERED, Step.input("drops", setting.dropsPerDay(), ""));
    return finding("feeder-unweighed", one, setting.from().day(), List.of(Step.input("drops", setting.dropsPerDay(), "")), why);
  }

  private Finding finding(String key, FeederToday one, Day since, List<Step.Input> facts, Step why) {
    DietRule rule = reference.rule(key);
    return new Finding(rule, List.of(), null, one.feeder().key(), since, today.since(since), List.of(), facts, List.of(why));
  }
}
