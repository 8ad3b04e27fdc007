package provender.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import provender.engine.feeder.Drops;
import provender.engine.feeder.Hopper;
import provender.engine.feeder.Portions;
import provender.engine.feeder.Slots;
import provender.engine.quantity.Range;
import provender.engine.reference.Reference;
import provender.engine.source.Constant;
import provender.engine.source.Constants;
import provender.engine.source.Step;

/** {@code portions}: whole drops for each feeder and time of day that come closest to a day's dry food. */
final class PortionsCall {
  private static final double MOST_GRAMS = 100_000;
  private static final int MOST_FEEDERS = 6;
  private static final int MOST_TIMES = 48;
  private static final double MOST_DROPS = 1000;
  private static final double USUAL_CONFIDENCE = 0.95;

  private PortionsCall() {}

  private record Asked(String id, List<String> times, double hopperGrams, Portions.Dispenser dispenser) {}

  static Map<String, Object> answer(Question asked, Reference reference) {
    double target = asked.number("targetGrams", 0, MOST_GRAMS);
    double confidence = asked.numberOr("confidence", 0.5, 0.999, USUAL_CONFIDENCE);
    List<Question> items = asked.list("feeders");
    if (items.size() > MOST_FEEDERS) {
      asked.refuse("feeders", "at most 6 feeders");
    }
    List<Asked> feeders = new ArrayList<>();
    List<String> ids = new ArrayList<>();
    for (Question item : items) {
      Asked feeder = feeder(item, confidence, reference.constants());
      feeders.add(feeder);
      boolean taken = ids.contains(feeder.id());
      ids.add(feeder.id());
      if (taken) {
        item.refuse("id", "an id no other feeder here has");
      }
    }
    asked.nothingElse();
    return asked.isFaulty() ? Map.of() : answer(target, feeders);
  }

  private static Asked feeder(Question item, double confidence, Constants constants) {
    String id = item.text("id");
    double grams = item.positive("gramsPerDrop", MOST_GRAMS);
    double spread = constants.value(Constant.DROP_VARIATION) * grams;
    double deviation = item.numberOr("standardDeviationGrams", 0, MOST_GRAMS, spread);
    int weighed = (int) item.wholeOr("dropsWeighed", 2, 100_000, constants.value(Constant.DROPS_ASSUMED_WEIGHED));
    List<String> times = item.textsOr("times");
    if (times.isEmpty() || times.size() > MOST_TIMES || !areTimes(times)) {
      item.refuse("times", "1 to 48 times of day such as 08:30");
    }
    int least = (int) item.wholeOr("minDrops", 0, MOST_DROPS, 0);
    int most = (int) item.wholeOr("maxDrops", 0, MOST_DROPS, MOST_DROPS);
    double clear = item.numberOr("clearGrams", 0, MOST_GRAMS, MOST_GRAMS);
    double share = item.numberOr("share", 0, 1, 1);
    double hopper = item.numberOr("hopperGrams", 0, MOST_GRAMS, Double.NaN);
    item.nothingElse();
    if (least > most) {
      item.refuse("minDrops", "at most maxDrops");
    }
    Drops drops = new Drops(weighed, 1, grams, deviation, confidence);
    int cleared = drops.mostWithin(clear, most);
    if (cleared < least) {
      item.refuse("clearGrams", "enough for minDrops at once");
    }
    Slots.Bounds bounds = Slots.Bounds.alike(times.size(), least, Math.max(least, cleared));
    return new Asked(id, times, hopper, new Portions.Dispenser(drops, share, bounds));
  }

  private static boolean areTimes(List<String> texts) {
    for (String text : texts) {
      if (!isTime(text)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isTime(String text) {
    return text.length() == 5 && text.charAt(2) == ':' && digits(text, 0, 24) && digits(text, 3, 60);
  }

  private static boolean digits(String text, int at, int below) {
    int tens = text.charAt(at) - '0';
    int ones = text.charAt(at + 1) - '0';
    return tens >= 0 && tens <= 9 && ones >= 0 && ones <= 9 && tens * 10 + ones < below;
  }

  private static Map<String, Object> answer(double target, List<Asked> feeders) {
    List<Portions.Dispenser> dispensers = new ArrayList<>();
    for (Asked feeder : feeders) {
      dispensers.add(feeder.dispenser());
    }
    Portions portions = Portions.of(target, dispensers);
    List<Object> lines = new ArrayList<>();
    for (int i = 0; i < feeders.size(); i++) {
      lines.add(line(feeders.get(i), portions, i));
    }
    Range expected = portions.expectedGrams();
    Step step =
        Step.of(
            "portions",
            "least (Σ grams − target)² + Σ (grams − share × target)²",
            expected.value(),
            "g/d",
            Step.PRACTICE,
            Step.input("target", target, "g/d"),
            Step.input("offTarget", expected.value() - target, "g/d"));
    return Shapes.object(
        "feeders", lines,
        "expectedGrams", Shapes.range(expected),
        "offTargetGrams", expected.value() - target,
        "why", Shapes.steps(List.of(step)));
  }

  private static Map<String, Object> line(Asked feeder, Portions portions, int place) {
    List<Object> times = new ArrayList<>();
    int[] drops = portions.atEachTime(place);
    Drops weighed = feeder.dispenser().drops();
    for (int i = 0; i < drops.length; i++) {
      times.add(Shapes.object("time", feeder.times().get(i), "drops", (double) drops[i], "grams", drops[i] * weighed.mean()));
    }
    int all = portions.drops(place);
    boolean lasts = all > 0 && !Double.isNaN(feeder.hopperGrams());
    return Shapes.object(
        "id", feeder.id(),
        "dropsPerDay", (double) all,
        "expectedGrams", Shapes.range(all > 0 ? weighed.prediction(all) : Range.ZERO),
        "times", times,
        "hopperDays", lasts ? Shapes.range(Hopper.days(Range.exactly(feeder.hopperGrams()), weighed, all)) : null);
  }
}
