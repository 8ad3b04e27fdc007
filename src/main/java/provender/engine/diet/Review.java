package provender.engine.diet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.engine.fish.Fish;
import provender.engine.fish.Weight;
import provender.engine.food.Component;
import provender.engine.food.Food;
import provender.engine.intake.Helping;
import provender.engine.intake.Meal;
import provender.engine.intake.Preferences;
import provender.engine.intake.Serving;
import provender.engine.intake.Sightings;
import provender.engine.intake.Table;
import provender.engine.quantity.Day;
import provender.engine.ration.GrowthCost;
import provender.engine.ration.Model;
import provender.engine.ration.Ration;
import provender.engine.source.Constant;
import provender.engine.source.Constants;

/** The weeks looked back on: who was due what, who got what, meal by meal and day by day, today last. */
public final class Review {
  /** A growing fish is taken to another mass once a week: what it gains in between is far within the error of its mass. */
  private static final int WEEK = 7;

  /** Single servings are remembered for the feedings a keeper may still ask about. */
  private static final int KEPT_DAYS = 7;

  private final Day first;
  private final int days;
  private final List<Fish> fish;
  private final Ledger ledger;
  private final List<FishDiet> diets = new ArrayList<>();
  private final Table table;
  private final Sightings sightings;
  private final List<List<Serving>> served = new ArrayList<>();
  private final double[] givenKj;
  /** By component, the last epoch day on which it was on the common table. */
  private final int[] onTheTable = new int[Component.values().length];

  private Review(List<Fish> fish, Foods foods, Day today, int days, Preferences preferences, Sightings sightings) {
    this.fish = fish;
    this.sightings = sightings;
    this.first = today.plus(1 - days);
    this.days = days;
    this.givenKj = new double[days];
    Arrays.fill(onTheTable, FishDiet.NEVER);
    this.ledger = new Ledger(fish.size(), days, foods);
    for (int line = 0; line < fish.size(); line++) {
      diets.add(new FishDiet(fish.get(line), line, ledger, first, onTheTable));
    }
    this.table = new Table(fish, preferences);
  }

  /**
   * Looks back over some days.
   *
   * @param meals oldest first, none before the first day
   * @param temperatureC one per day, oldest first; their number is the number of days
   */
  public static Review of(
      List<Fish> fish,
      List<DatedMeal> meals,
      Sightings sightings,
      double[] temperatureC,
      Day today,
      Model model,
      Constants constants) {
    Preferences preferences = new Preferences(fish, constants.value(Constant.FLOOR_PREFERENCE), sightings);
    Review review = new Review(fish, new Foods(meals), today, temperatureC.length, preferences, sightings);
    double takenFraction = constants.value(Constant.TAKEN_FRACTION);
    int next = 0;
    for (int day = 0; day < review.days; day++) {
      review.lay(day, temperatureC[day], model, constants);
      boolean laid = false;
      while (next < meals.size() && meals.get(next).day().epochDay() <= review.day(day).epochDay()) {
        if (!laid) {
          review.seat(day, constants.value(Constant.MAX_INTAKE_RATIO));
          laid = true;
        }
        review.serve(day, meals.get(next++).meal());
      }
      if (laid) {
        review.close(day, takenFraction);
      }
    }
    return review;
  }

  /** What each is due on a day, from its mass and the water's warmth. */
  private void lay(int day, double temperatureC, Model model, Constants constants) {
    double perMass = Ration.middle(1, temperatureC, model).kj();
    Day that = day(day);
    for (FishDiet diet : diets) {
      Fish fish = diet.fish();
      if (fish.wasHereOn(that)) {
        if (diet.needsWeighing() || fish.isGrowing() && day % WEEK == 0 || fish.wasMeasuredOn(that)) {
          weigh(diet, Weight.of(fish, that, constants), model, constants);
        }
        diet.due(day, diet.appetite() * fish.guild().rationFactor() * perMass + diet.growthKj());
      }
    }
  }

  private static void weigh(FishDiet diet, Weight weight, Model model, Constants constants) {
    double grams = weight.grams().value();
    int count = diet.fish().count();
    double growth = GrowthCost.usualKj(grams, weight.gainGrams(), constants).value();
    diet.weighs(model.metabolicMass(grams) * count, growth * count);
  }

  private void seat(int day, double mostOfDue) {
    table.clear();
    Day that = day(day);
    for (int line = 0; line < diets.size(); line++) {
      FishDiet diet = diets.get(line);
      boolean eats = diet.fish().wasHereOn(that) && !sightings.turnedFromAll(diet.fish().key(), that.epochDay());
      table.seat(line, eats ? diet.appetite() : 0, diet.dueKj(day, day + 1) * mostOfDue);
    }
  }

  private void serve(int day, Meal meal) {
    double eaten = 1 - meal.leftoverFraction();
    for (Helping helping : meal.helpings()) {
      Food food = helping.food();
      if (food != null) {
        offer(day, helping.fish(), food);
        if (!helping.goesToIsolation(fish)) {
          givenKj[day] += helping.grams() * food.kjPerGram() * (helping.fish() == null ? eaten : 1);
        }
      }
    }
    List<Serving> kept = new ArrayList<>();
    table.serve(
        meal,
        serving -> {
          ledger.ate(day, serving);
          if (day >= days - KEPT_DAYS) {
            kept.add(serving.kept());
          }
        });
    served.add(kept);
  }

  private void offer(int day, @Nullable String to, Food food) {
    if (to == null) {
      for (Component component : food.brings()) {
        onTheTable[component.ordinal()] = day(day).epochDay();
      }
      return;
    }
    for (FishDiet diet : diets) {
      if (diet.fish().key().equals(to) && diet.fish().wasHereOn(day(day))) {
        diet.wasHanded(day, food);
      }
    }
  }

  private void close(int day, double takenFraction) {
    for (FishDiet diet : diets) {
      diet.closeDay(day, takenFraction);
    }
  }

  /** Whether people saw it eat on a day. */
  boolean wasSeenEating(FishDiet diet, int day) {
    return sightings.ate(diet.fish().key(), day(day).epochDay());
  }

  /** Whether people saw it turn from food on a day on which it is reckoned to have got nothing. */
  boolean turnedAway(FishDiet diet, int day) {
    return sightings.turned(diet.fish().key(), day(day).epochDay()) && diet.gotKj(day, day + 1) == 0;
  }

  /** Number of days, today being the last. */
  public int days() {
    return days;
  }

  public Day day(int index) {
    return first.plus(index);
  }

  public List<FishDiet> diets() {
    return diets;
  }

  /** What came of each meal, in the order in which they were given; forgotten for meals of more than a week ago. */
  public List<List<Serving>> served() {
    return served;
  }

  /** Energy given to the display on one day, in kJ, less what was left over. */
  public double givenKj(int day) {
    return givenKj[day];
  }

  /** Energy due to the display on one day, in kJ. */
  public double dueKj(int day) {
    double due = 0;
    for (FishDiet diet : diets) {
      if (!diet.fish().inIsolation()) {
        due += diet.dueKj(day, day + 1);
      }
    }
    return due;
  }
}
