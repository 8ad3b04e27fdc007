package provender.engine.diet;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import provender.engine.food.Component;
import provender.engine.food.Food;
import provender.engine.intake.Serving;

/**
 * What every line of the roster was due, and ate of each food, day by day. All lines share a few long arrays, since many
 * short ones are what a browser is slow to make.
 */
final class Ledger {
  private static final int COMPONENTS = Component.values().length;

  private final int lines;
  private final int days;
  private final Foods foods;
  /** By line, then day, so that one line's days lie side by side. */
  private final double[] dueKj;

  private final double[] gotKj;
  private final double[] dryGrams;
  private final int[] meals;
  /** By line, then food, then day, as offered. */
  private final double[] grams;
  /** By line, then component. */
  private final int[] taken;

  private final int[] handed;
  /** Of the day that is being eaten: by food, then line, so that a helping goes to all lines in one run. */
  private final double[] plates;

  private final int[] sittings;
  private final int[] lastMeal;
  private final double[] componentKj = new double[COMPONENTS];
  private final Map<String, boolean[]> brought = new HashMap<>();

  Ledger(int lines, int days, Foods foods) {
    this.lines = lines;
    this.days = days;
    this.foods = foods;
    this.dueKj = new double[lines * days];
    this.gotKj = new double[lines * days];
    this.dryGrams = new double[lines * days];
    this.meals = new int[lines * days];
    this.plates = new double[foods.size() * lines];
    this.sittings = new int[lines];
    this.lastMeal = new int[lines];
    this.grams = new double[lines * foods.size() * days];
    this.taken = new int[lines * COMPONENTS];
    this.handed = new int[lines * COMPONENTS];
    Arrays.fill(taken, FishDiet.NEVER);
    Arrays.fill(handed, FishDiet.NEVER);
  }

  Foods foods() {
    return foods;
  }

  void due(int line, int day, double kj) {
    dueKj[line * days + day] = kj;
  }

  /** Handed to one line, whether it took it or not. */
  void handed(int line, int epochDay, Food food) {
    for (Component component : food.brings()) {
      handed[line * COMPONENTS + component.ordinal()] = epochDay;
    }
  }

  /** One helping as all lines ate it. */
  void ate(int day, Serving serving) {
    int at = foods.of(serving.food()) * lines;
    int meal = serving.meal();
    double[] eaten = serving.gramsEaten();
    for (int line = 0; line < eaten.length; line++) {
      if (eaten[line] > 0) {
        plates[at + line] += eaten[line];
        if (lastMeal[line] != meal) {
          lastMeal[line] = meal;
          sittings[line]++;
        }
      }
    }
    for (String supplement : serving.helping().supplements()) {
      brings(supplement, day, serving);
    }
  }

  private void brings(String supplement, int day, Serving serving) {
    boolean[] on = brought.get(supplement);
    if (on == null) {
      on = new boolean[lines * days];
      brought.put(supplement, on);
    }
    for (int line = 0; line < lines; line++) {
      on[line * days + day] |= serving.grams(line) > 0;
    }
  }

  /**
   * Adds up one line's day when it is over.
   *
   * @param fraction the least part of the day's need that a component must bring to count as taken
   * @return whether it ate at all
   */
  boolean close(int line, int day, int epochDay, double fraction) {
    double kj = 0;
    double dry = 0;
    for (int place = 0; place < foods.size(); place++) {
      double its = plates[place * lines + line];
      if (its > 0) {
        plates[place * lines + line] = 0;
        grams[(line * foods.size() + place) * days + day] = its;
        Food food = foods.at(place);
        kj += its * food.kjPerGram();
        dry += its * food.dryPerGram();
        for (Component component : food.brings()) {
          componentKj[component.ordinal()] += its * food.kjPerGram() * food.share(component);
        }
      }
    }
    meals[line * days + day] = sittings[line];
    sittings[line] = 0;
    lastMeal[line] = 0;
    gotKj[line * days + day] = kj;
    dryGrams[line * days + day] = dry;
    if (kj > 0) {
      taste(line, epochDay, dueKj[line * days + day] * fraction);
    }
    return kj > 0;
  }

  private void taste(int line, int epochDay, double least) {
    for (int component = 0; component < COMPONENTS; component++) {
      if (componentKj[component] > 0 && componentKj[component] >= least) {
        taken[line * COMPONENTS + component] = epochDay;
      }
      componentKj[component] = 0;
    }
  }

  double dueKj(int line, int from, int to) {
    return sum(dueKj, line * days + from, line * days + to);
  }

  double gotKj(int line, int from, int to) {
    return sum(gotKj, line * days + from, line * days + to);
  }

  double dryGrams(int line, int from, int to) {
    return sum(dryGrams, line * days + from, line * days + to);
  }

  /** Grams of one food between two days, as offered. */
  double grams(int line, int food, int from, int to) {
    int at = (line * foods.size() + food) * days;
    return sum(grams, at + from, at + to);
  }

  /** Meals between two days at which a line ate anything. */
  int meals(int line, int from, int to) {
    int sum = 0;
    for (int i = line * days + from; i < line * days + to; i++) {
      sum += meals[i];
    }
    return sum;
  }

  /** Whether any food that a line ate between two days brought a supplement. */
  boolean hadWith(String supplement, int line, int from, int to) {
    boolean @Nullable [] on = brought.get(supplement);
    for (int i = line * days + from; on != null && i < line * days + to; i++) {
      if (on[i]) {
        return true;
      }
    }
    return false;
  }

  int lastHanded(int line, Component component) {
    return handed[line * COMPONENTS + component.ordinal()];
  }

  int lastTaken(int line, Component component) {
    return taken[line * COMPONENTS + component.ordinal()];
  }

  private static double sum(double[] values, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += values[i];
    }
    return sum;
  }
}
