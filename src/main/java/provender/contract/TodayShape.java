package provender.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import provender.engine.diet.Finding;
import provender.engine.diet.Review;
import provender.engine.food.Food;
import provender.engine.journal.Feeding;
import provender.engine.journal.Tank;
import provender.engine.quantity.Range;
import provender.engine.today.Today;

/** A tank's today as JSON. */
final class TodayShape {
  static final int FEEDINGS_DAYS = 3;

  private TodayShape() {}

  static Map<String, Object> of(Today today) {
    return Shapes.object(
        "day", (double) today.now().day().epochDay(),
        "minute", (double) today.now().minute(),
        "tank", tank(today.tank()),
        "temperature", Shapes.figure(today.temperature()),
        "temperatureFlag", today.temperatureFlag().key(),
        "biomassGrams", Shapes.figure(today.biomass()),
        "ration", ration(today),
        "fish", FishShape.all(today),
        "feedings", FeedingShape.all(today.feedings(FEEDINGS_DAYS)),
        "withdrawn", withdrawn(today.withdrawn(FEEDINGS_DAYS)),
        "lastFeeding", lastFeeding(today.lastFeeding()),
        "measures", LarderShape.measures(today.tank()),
        "ownFoods", LarderShape.ownFoods(today.tank(), today.reference()),
        "recipes", LarderShape.recipes(today.tank()),
        "conflicts", ConflictShape.all(today.conflicts()),
        "guarded", ConflictShape.guarded(today.guarded()),
        "feeders", FeederShape.all(today),
        "away", FeederShape.away(today),
        "dryPart", today.dryPart(),
        "proposal", FeederShape.proposal(today),
        "findings", findings(today.findings()),
        "days", days(today.review(), today));
  }

  private static Map<String, Object> tank(Tank tank) {
    return Shapes.object(
        "name", tank.name(),
        "volumeLitres", tank.volumeLitres(),
        "temperatureC", tank.temperatureC(),
        "usualFoods", tank.usualFoods());
  }

  private static Map<String, Object> ration(Today today) {
    Range left = today.remaining().range().atLeastZero();
    List<Object> foods = new ArrayList<>();
    for (String key : today.tank().usualFoods()) {
      Food food = today.reference().food(key);
      if (food != null && food.kjPerGram() > 0) {
        foods.add(Shapes.object("food", key, "grams", Shapes.range(left.times(1 / food.kjPerGram()))));
      }
    }
    return Shapes.object(
        "dueKj", Shapes.figure(today.due()),
        "factor", today.tank().rationFactor(),
        "learned", Shapes.figure(today.learnedFactor()),
        "weighings", (double) today.weighings(),
        "matters", Shapes.inputs(today.whatMatters()),
        "givenKj", Shapes.figure(today.given(true, true)),
        "givenHandKj", today.given(true, false).value(),
        "givenFeederKj", today.given(false, true).value(),
        "remainingKj", Shapes.figure(today.remaining()),
        "foods", foods);
  }

  private static List<Object> withdrawn(List<Feeding> feedings) {
    List<Object> list = new ArrayList<>();
    for (Feeding feeding : feedings) {
      list.add(
          Shapes.object(
              "id", feeding.id(),
              "day", (double) feeding.at().day().epochDay(),
              "minute", (double) feeding.at().minute(),
              "items", FeedingShape.items(feeding)));
    }
    return list;
  }

  private static @Nullable Object lastFeeding(@Nullable Feeding feeding) {
    return feeding == null
        ? null
        : Shapes.object(
            "day", (double) feeding.at().day().epochDay(), "minute", (double) feeding.at().minute(), "by", feeding.by());
  }

  private static List<Object> findings(List<Finding> findings) {
    List<Object> list = new ArrayList<>();
    for (Finding finding : findings) {
      list.add(FindingShape.of(finding));
    }
    return list;
  }

  private static List<Object> days(Review review, Today today) {
    List<Object> list = new ArrayList<>();
    Range due = today.due().range();
    double lowPart = due.value() > 0 ? due.low() / due.value() : 1;
    double highPart = due.value() > 0 ? due.high() / due.value() : 1;
    for (int day = review.days() - today.windowDays(); day < review.days(); day++) {
      list.add(
          Shapes.object(
              "day", (double) review.day(day).epochDay(),
              "dueKj", review.dueKj(day),
              "lowKj", review.dueKj(day) * lowPart,
              "highKj", review.dueKj(day) * highPart,
              "givenKj", review.givenKj(day)));
    }
    return list;
  }
}
