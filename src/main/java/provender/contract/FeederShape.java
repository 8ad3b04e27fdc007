package provender.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import provender.engine.feeder.AutoFeeder;
import provender.engine.feeder.Drops;
import provender.engine.feeder.LevelEffect;
import provender.engine.feeder.Reconciled;
import provender.engine.source.Constant;
import provender.engine.source.Constants;
import provender.engine.today.Away;
import provender.engine.today.FeederToday;
import provender.engine.today.Proposal;
import provender.engine.today.Today;

/** A tank's auto-feeders as JSON: settings, drops, hopper, and the portions that would make up the dry part of the ration. */
final class FeederShape {
  private FeederShape() {}

  static List<Object> all(Today today) {
    List<Object> list = new ArrayList<>();
    for (FeederToday one : today.feeders()) {
      list.add(of(one, today.reference().constants()));
    }
    return list;
  }

  private static Map<String, Object> of(FeederToday one, Constants constants) {
    AutoFeeder feeder = one.feeder();
    AutoFeeder.Setting setting = one.setting();
    AutoFeeder.Weighing weighing = one.weighing();
    return Shapes.object(
        "key", feeder.key(),
        "name", feeder.name(),
        "hopperGrams", feeder.hopperGrams(),
        "clearGrams", feeder.clearGrams(),
        "share", feeder.share(),
        "running", setting != null && setting.running(),
        "times", setting == null ? List.of() : times(setting.minutes(), setting.drops()),
        "mix", setting == null ? List.of() : mix(setting),
        "drops", weighing == null ? null : drops(weighing.drops()),
        "weighedDay", weighing == null ? null : (double) weighing.at().day().epochDay(),
        "gramsPerDay", Shapes.figure(one.gramsPerDay()),
        "kjPerDay", one.gramsPerDay().value() * one.kjPerGram(),
        "levelGrams", one.level() == null ? null : Shapes.range(one.level()),
        "hopperDays", one.days() == null ? null : Shapes.range(one.days()),
        "levelEffect", levelEffect(LevelEffect.of(feeder.weighings())),
        "found", found(one.found(), constants));
  }

  private static @Nullable Object levelEffect(@Nullable LevelEffect effect) {
    return effect == null ? null : Shapes.object("ratio", effect.ratio(), "chance", effect.chance());
  }

  private static List<Object> times(int[] minutes, int[] drops) {
    List<Object> times = new ArrayList<>();
    for (int i = 0; i < minutes.length; i++) {
      times.add(Shapes.object("minute", (double) minutes[i], "drops", (double) drops[i]));
    }
    return times;
  }

  private static List<Object> mix(AutoFeeder.Setting setting) {
    List<Object> mix = new ArrayList<>();
    for (AutoFeeder.Part part : setting.mix()) {
      mix.add(Shapes.object("food", part.food(), "share", part.share()));
    }
    return mix;
  }

  private static Map<String, Object> drops(Drops drops) {
    return Shapes.object(
        "gramsPerDrop", Shapes.range(drops.interval()),
        "standardDeviationGrams", drops.deviation(),
        "coefficientOfVariation", drops.variation(),
        "weighings", (double) drops.weighings(),
        "dropsPerWeighing", (double) drops.dropsPerWeighing());
  }

  private static @Nullable Object found(@Nullable Reconciled found, Constants constants) {
    return found == null
        ? null
        : Shapes.object(
            "expectedGrams", Shapes.range(found.expected()),
            "usedGrams", found.used(),
            "ratio", found.ratio(),
            "chance", found.chance(),
            "verdict",
                found.verdict(constants.value(Constant.FEEDER_ALARM_CHANCE), constants.value(Constant.FEEDER_JAM_RATIO)).key());
  }

  static Map<String, Object> away(Today today) {
    Away away = today.away();
    List<Object> lacks = new ArrayList<>();
    for (Away.Lack lack : away.lacks()) {
      lacks.add(
          Shapes.object("component", lack.component().key(), "days", (double) lack.days(), "fish", lack.fish()));
    }
    return Shapes.object("hopperDays", away.hopperDays(), "lacks", lacks);
  }

  /** Null where no feeder can be reckoned with. */
  static @Nullable Object proposal(Today today) {
    Proposal proposal = today.proposal();
    if (proposal == null) {
      return null;
    }
    List<Object> lines = new ArrayList<>();
    for (Proposal.Line line : proposal.lines()) {
      lines.add(
          Shapes.object(
              "feeder", line.feeder(), "times", times(line.minutes(), line.drops()), "gramsPerDay", Shapes.range(line.grams())));
    }
    return Shapes.object(
        "targetKj", proposal.targetKj(), "bringsKj", Shapes.range(proposal.bringsKj()), "feeders", lines);
  }
}
