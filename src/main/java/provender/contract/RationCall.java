package provender.contract;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import provender.engine.food.Food;
import provender.engine.quantity.Range;
import provender.engine.ration.GrowthCost;
import provender.engine.ration.PublishedModel;
import provender.engine.ration.Ration;
import provender.engine.reference.Reference;
import provender.engine.source.Constant;
import provender.engine.source.Constants;
import provender.engine.source.Figure;

/** {@code ration}: the energy due per day, per fish and in all, and the grams of each food that would cover it. */
final class RationCall {
  private static final double GRAMS_PER_PERCENT = 100;

  private RationCall() {}

  static Map<String, Object> answer(Question asked, Reference reference) {
    double temperature = asked.number("temperatureC", 0, 40);
    RationModel model = RationModel.read(asked.inner("model"), reference);
    List<RationFish> fish = new ArrayList<>();
    for (Question one : asked.list("fish")) {
      fish.add(RationFish.read(one, model.activity(), reference));
    }
    List<Food> foods = new ArrayList<>();
    if (asked.has("foods")) {
      for (Question food : asked.list("foods")) {
        foods.addAll(food(food, reference));
      }
    }
    asked.nothingElse();
    if (model.onTurf()) {
      return TurfRation.answer(asked, fish, temperature, reference.constants());
    }
    if (asked.isFaulty()) {
      return Map.of();
    }
    Map<String, Object> answer = answer(fish, foods, model.reckonedC(temperature, reference), model, reference.constants());
    answer.put("temperatureFlag", model.flag(temperature, reference));
    return answer;
  }

  private static Map<String, Object> answer(
      List<RationFish> fish, List<Food> foods, double temperature, RationModel model, Constants constants) {
    List<Object> lines = new ArrayList<>();
    List<Ration.Eater> eaters = new ArrayList<>();
    Range growth = Range.ZERO;
    double bodyGrams = 0;
    for (RationFish one : fish) {
      Figure due = Ration.of(one.eater(), temperature, model.line());
      double grams = one.eater().grams().value();
      double gain = gain(one, grams, temperature, model);
      Range its = growthKj(grams, gain, model.published(), constants).times(one.eater().count());
      eaters.add(one.eater());
      growth = growth.plus(its);
      bodyGrams += grams * one.eater().count();
      lines.add(line(one, due.range(), its, gain, foods, model.published()));
    }
    Figure maintenance = Ration.ofAll(eaters, temperature, model.line());
    Range all = maintenance.range().plus(growth);
    PublishedModel published = model.published();
    Map<String, Object> answer =
        Shapes.object(
            "fish", lines,
            "energyKj", Shapes.range(all),
            "maintenanceKj", Shapes.range(maintenance.range()),
            "growthKj", Shapes.range(growth),
            "energyBasis", published != null && published.gross() ? "gross" : "digestible",
            "foods", covering(foods, all),
            "percentOfBody", percentOfBody(foods, all, bodyGrams),
            "percentOfBodyBand",
                Shapes.object(
                    "low", constants.value(Constant.PERCENT_BODY_LOW),
                    "high", constants.value(Constant.PERCENT_BODY_HIGH),
                    "source", constants.source(Constant.PERCENT_BODY_LOW)),
            "why", Shapes.steps(maintenance.why()));
    return answer;
  }

  private static double gain(RationFish fish, double grams, double temperature, RationModel model) {
    PublishedModel published = model.published();
    return model.grows() && published != null
        ? published.gain().gramsPerDay(grams, temperature)
        : fish.gainGrams();
  }

  /** A published line has its own price of growth or none; the usual one is known to lie within a factor of four. */
  private static Range growthKj(double grams, double gain, @Nullable PublishedModel published, Constants constants) {
    if (gain == 0) {
      return Range.ZERO;
    }
    double price = published == null ? Double.NaN : published.cost().kjPerGram(grams);
    return Double.isNaN(price)
        ? GrowthCost.usualKj(grams, Range.exactly(gain), constants)
        : Range.exactly(gain * price);
  }

  private static Map<String, Object> line(
      RationFish fish, Range maintenance, Range growth, double gain, List<Food> foods, @Nullable PublishedModel published) {
    Range all = maintenance.plus(growth);
    double grams = fish.eater().grams().value();
    return Shapes.object(
        "id", fish.id(),
        "energyKj", Shapes.range(all),
        "maintenanceKj", Shapes.range(maintenance),
        "growthKj", Shapes.range(growth),
        "gainGramsPerDay", gain,
        "proteinGrams",
            published == null ? Double.NaN : published.protein().gramsPerDay(grams, gain) * fish.eater().count(),
        "foods", covering(foods, all));
  }

  private static List<Food> food(Question asked, Reference reference) {
    @Nullable Food food = reference.food(asked.text("food"));
    asked.nothingElse();
    if (food == null) {
      asked.refuse("food", "a key of the food table");
      return List.of();
    }
    return List.of(food);
  }

  private static Map<String, Object> covering(List<Food> foods, Range kj) {
    Map<String, Object> grams = new LinkedHashMap<>();
    for (Food food : foods) {
      grams.put(food.key(), Shapes.range(kj.times(1 / food.kjPerGram())));
    }
    return grams;
  }

  /** How much of the fish's mass a day's food would be, as fed; it means nothing without the food it is said of. */
  private static Map<String, Object> percentOfBody(List<Food> foods, Range kj, double bodyGrams) {
    Map<String, Object> percent = new LinkedHashMap<>();
    for (Food food : foods) {
      percent.put(food.key(), Shapes.range(kj.times(GRAMS_PER_PERCENT / food.kjPerGram() / bodyGrams)));
    }
    return percent;
  }
}
