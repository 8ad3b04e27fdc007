package provender.engine.diet;

import java.util.ArrayList;
import java.util.List;
import provender.engine.fish.Fish;
import provender.engine.fish.Weight;
import provender.engine.food.Component;
import provender.engine.food.Food;
import provender.engine.intake.Helping;
import provender.engine.intake.Meal;
import provender.engine.intake.Preferences;
import provender.engine.intake.Sightings;
import provender.engine.intake.Table;
import provender.engine.intake.Table.Share;
import provender.engine.quantity.Day;
import provender.engine.ration.Model;
import provender.engine.ration.Ration;
import provender.engine.source.Constant;
import provender.engine.source.Constants;

/** The weeks looked back on: who was due what, who got what, meal by meal and day by day, today last. */
public final class Review {
  private final Day first;
  private final int days;
  private final List<FishDiet> diets = new ArrayList<>();
  private final List<List<Share>> served = new ArrayList<>();
  private final double[] givenKj;
  private final Preferences preferences;

  private Review(List<Fish> fish, Day today, int days, Preferences preferences) {
    this.first = today.plus(1 - days);
    this.days = days;
    this.givenKj = new double[days];
    this.preferences = preferences;
    for (Fish one : fish) {
      diets.add(new FishDiet(one, first, days));
    }
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
    Review review = new Review(fish, today, temperatureC.length, preferences);
    int next = 0;
    for (int day = 0; day < review.days; day++) {
      Table table = review.lay(day, temperatureC[day], model, constants);
      while (next < meals.size() && meals.get(next).day().epochDay() <= review.day(day).epochDay()) {
        review.serve(table, day, meals.get(next++).meal());
      }
      for (FishDiet diet : review.diets) {
        diet.closeDay(day, constants.value(Constant.TAKEN_FRACTION));
      }
    }
    return review;
  }

  private Table lay(int day, double temperatureC, Model model, Constants constants) {
    List<Table.Eater> eaters = new ArrayList<>();
    for (FishDiet diet : diets) {
      Fish fish = diet.fish();
      if (!fish.wasHereOn(day(day))) {
        eaters.add(new Table.Eater(fish, 0, 0));
        continue;
      }
      if (diet.needsWeighing() || fish.wasMeasuredOn(day(day))) {
        diet.weighs(Weight.of(fish, day(day), constants).grams().value());
      }
      double appetite = model.metabolicMass(diet.grams()) * fish.count();
      double due = Ration.middle(appetite * fish.guild().rationFactor(), temperatureC, model).kj();
      diet.due(day, due);
      eaters.add(new Table.Eater(fish, appetite, due * constants.value(Constant.MAX_INTAKE_RATIO)));
    }
    return new Table(eaters, preferences);
  }

  private void serve(Table table, int day, Meal meal) {
    List<Share> shares = table.serve(meal);
    double eaten = 1 - meal.leftoverFraction();
    for (Helping helping : meal.helpings()) {
      Food food = helping.food();
      if (food != null) {
        offer(day, helping, food);
        if (!isForIsolation(helping)) {
          givenKj[day] += helping.grams() * food.kjPerGram() * (helping.fish() == null ? eaten : 1);
        }
      }
    }
    for (Share share : shares) {
      diets.get(share.eater()).ate(day, share);
    }
    served.add(day >= days - FishDiet.KEPT_DAYS ? shares : List.of());
  }

  private void offer(int day, Helping helping, Food food) {
    for (FishDiet diet : diets) {
      Fish fish = diet.fish();
      boolean forIt = helping.fish() == null ? !fish.inIsolation() : fish.key().equals(helping.fish());
      if (forIt && fish.wasHereOn(day(day))) {
        for (Component component : food.brings()) {
          diet.wasOffered(day, component);
        }
      }
    }
  }

  private boolean isForIsolation(Helping helping) {
    if (helping.fish() == null) {
      return false;
    }
    for (FishDiet diet : diets) {
      if (diet.fish().inIsolation() && diet.fish().key().equals(helping.fish())) {
        return true;
      }
    }
    return false;
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

  /** The shares of each meal in the order in which they were given; forgotten for meals of long ago. */
  public List<List<Share>> served() {
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
