package provender.contract;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import provender.engine.fish.Guild;
import provender.engine.fish.Species;
import provender.engine.food.Food;
import provender.engine.quantity.Range;
import provender.engine.ration.Model;
import provender.engine.ration.Ration;
import provender.engine.reference.Reference;
import provender.engine.source.Basis;
import provender.engine.source.Figure;
import provender.engine.source.Step;

/** {@code ration}: the digestible energy due per day, per fish and in all, and the grams of each food that would cover it. */
final class RationCall {
  private RationCall() {}

  private record Line(String id, Ration.Eater eater) {}

  static Map<String, Object> answer(Question asked, Reference reference) {
    Model usual = Model.usual(reference.constants());
    double temperature = asked.number("temperatureC", 0, 40);
    Question wanted = asked.inner("model");
    Model model = wanted == null ? usual : model(wanted, usual);
    double activity = wanted == null ? Double.NaN : wanted.numberOr("activity", 0.1, 10, Double.NaN);
    if (wanted != null) {
      wanted.nothingElse();
    }
    List<Line> lines = new ArrayList<>();
    for (Question fish : asked.list("fish")) {
      lines.add(line(fish, activity, reference));
    }
    List<Food> foods = new ArrayList<>();
    if (asked.has("foods")) {
      for (Question food : asked.list("foods")) {
        foods.addAll(food(food, reference));
      }
    }
    asked.nothingElse();
    return asked.isFaulty() ? Map.of() : answer(lines, foods, temperature, model);
  }

  private static Map<String, Object> answer(List<Line> lines, List<Food> foods, double temperature, Model model) {
    List<Object> fish = new ArrayList<>();
    List<Ration.Eater> eaters = new ArrayList<>();
    for (Line line : lines) {
      Figure due = Ration.of(line.eater(), temperature, model);
      eaters.add(line.eater());
      fish.add(
          Shapes.object(
              "id", line.id(), "energyKj", Shapes.range(due.range()), "foods", covering(foods, due.range())));
    }
    Figure all = Ration.ofAll(eaters, temperature, model);
    return Shapes.object(
        "fish", fish,
        "energyKj", Shapes.range(all.range()),
        "foods", covering(foods, all.range()),
        "why", Shapes.steps(all.why()));
  }

  private static Line line(Question fish, double activity, Reference reference) {
    String id = fish.text("id");
    Figure mass = mass(fish, reference);
    double count = fish.numberOr("count", 1, 100_000, 1);
    double itsActivity = Double.isNaN(activity) ? 1 : activity;
    if (fish.has("guild")) {
      Guild guild = reference.guild(fish.text("guild"));
      if (guild == null) {
        fish.refuse("guild", "a key of the guild table");
      } else if (Double.isNaN(activity)) {
        itsActivity = guild.rationFactor();
      }
    }
    fish.nothingElse();
    return new Line(id, new Ration.Eater(mass, (int) count, itsActivity));
  }

  private static Figure mass(Question fish, Reference reference) {
    if (!fish.has("species")) {
      double grams = fish.positive("weightGrams", 30_000_000);
      double safe = Double.isNaN(grams) ? 1 : grams;
      return Figure.of(
          Range.exactly(safe), Basis.MEASURED, Step.of("weighed", "", safe, "g", Step.ENTERED));
    }
    Species species = reference.species(fish.text("species"));
    double length = fish.positive("lengthCm", 2000);
    double error = fish.numberOr("lengthErrorCm", 0, 2000, 0);
    if (species == null) {
      fish.refuse("species", "a scientific name of the species table, or weightGrams instead");
    }
    Range grams =
        species == null || Double.isNaN(length) || Double.isNaN(error)
            ? Range.exactly(1)
            : species.lengthWeight().grams(length, error);
    return Figure.of(
        grams, Basis.ESTIMATED, Step.of("massFromLength", "W = a × (L ± e)^b", grams.value(), "g", Step.ENTERED));
  }

  private static Model model(Question wanted, Model usual) {
    double middle = wanted.has("coefficientKj") ? wanted.positive("coefficientKj", 10_000) : Double.NaN;
    boolean own = !Double.isNaN(middle);
    double value = own ? middle : usual.coefficientKj().value();
    double low = wanted.numberOr("coefficientLowKj", 0, 10_000, own ? value : usual.coefficientKj().low());
    double high = wanted.numberOr("coefficientHighKj", 0, 10_000, own ? value : usual.coefficientKj().high());
    double exponent = wanted.numberOr("exponent", 0.1, 2, usual.exponent());
    double slope = wanted.numberOr("temperatureSlope", 0, 1, usual.temperatureSlope());
    double reference = wanted.numberOr("referenceC", 0, 40, usual.referenceC());
    if (low > value || high < value) {
      wanted.refuse("coefficientKj", "a number between coefficientLowKj and coefficientHighKj");
    }
    return wanted.isFaulty()
        ? usual
        : new Model(new Range(low, value, high), exponent, slope, reference, own ? Step.ENTERED : usual.source());
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
}
