package provender.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import provender.engine.diet.FishDiet;
import provender.engine.fish.Band;
import provender.engine.fish.Fish;
import provender.engine.quantity.Range;
import provender.engine.today.FishToday;
import provender.engine.today.Today;

/** The roster with each fish's mass, ration, estimated intake and diet, as JSON. */
final class FishShape {
  private static final int WEEK = 7;

  private FishShape() {}

  static List<Object> all(Today today) {
    List<Object> list = new ArrayList<>();
    for (FishToday fish : today.fish()) {
      list.add(of(fish, today));
    }
    return list;
  }

  private static Map<String, Object> of(FishToday line, Today today) {
    Fish fish = line.fish();
    FishDiet diet = line.diet();
    int end = today.review().days();
    String level = fish.guild().warningLevel();
    return Shapes.object(
        "id", fish.key(),
        "name", fish.name(),
        "species", fish.speciesName(),
        "commonName", fish.species() == null ? fish.speciesName() : fish.species().commonName(),
        "guild", fish.guild().key(),
        "place", fish.inIsolation() ? "isolation" : "display",
        "count", (double) fish.count(),
        "weightGrams", Shapes.figure(line.weight().grams()),
        "ageDays", (double) line.weight().ageDays(),
        "staleDays", line.stale() ? (double) line.weight().ageDays() : 0.0,
        "dueKj", Shapes.figure(line.dueKj()),
        "gotKj", Shapes.range(Range.exactly(diet.gotKj(end - 1, end))),
        "gotGrams", diet.gotGrams(end - 1, end),
        "weekDueKj", diet.dueKj(end - 1 - WEEK, end - 1),
        "weekGotKj", diet.gotKj(end - 1 - WEEK, end - 1),
        "lastTookDay", day(diet.lastTook()),
        "components", components(diet, today),
        "warning", level.equals("info") ? null : "guild." + fish.guild().key() + ".warning",
        "warningLevel", level);
  }

  private static List<Object> components(FishDiet diet, Today today) {
    List<Object> list = new ArrayList<>();
    int end = today.review().days();
    for (Band band : diet.fish().guild().bands()) {
      double share = diet.share(band.component(), end - today.windowDays(), end);
      list.add(
          Shapes.object(
              "component", band.component().key(),
              "share", share,
              "min", band.minShare(),
              "target", band.targetShare(),
              "max", band.maxShare(),
              "gapDays", (double) band.gapDays(),
              "daysSinceOffered", since(diet.lastOffered(band.component()), today),
              "daysSinceTaken", since(diet.lastTaken(band.component()), today)));
    }
    return list;
  }

  private static @Nullable Double since(int epochDay, Today today) {
    return epochDay == FishDiet.NEVER ? null : (double) (today.now().day().epochDay() - epochDay);
  }

  private static @Nullable Double day(int epochDay) {
    return epochDay == FishDiet.NEVER ? null : (double) epochDay;
  }
}
