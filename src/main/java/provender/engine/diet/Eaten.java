package provender.engine.diet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What one line of the roster ate of each food, day by day, in dry matter. Foods go by their place in {@link Foods}. */
final class Eaten {
  private final int days;
  /** By food, then day, so that one food's days lie side by side. */
  private final double[] dryGrams;

  private final int[] meals;
  private final Map<String, boolean[]> brought = new HashMap<>();

  Eaten(int foods, int days) {
    this.days = days;
    this.dryGrams = new double[foods * days];
    this.meals = new int[days];
  }

  void took(int day, int food, double grams) {
    dryGrams[food * days + day] += grams;
  }

  void atMeal(int day) {
    meals[day]++;
  }

  void broughtAll(int day, List<String> supplements) {
    for (String supplement : supplements) {
      boolean[] on = brought.get(supplement);
      if (on == null) {
        on = new boolean[days];
        brought.put(supplement, on);
      }
      on[day] = true;
    }
  }

  /** Dry matter of one food between two days, in grams. */
  double dryGrams(int food, int from, int to) {
    double sum = 0;
    for (int i = food * days + from; i < food * days + to; i++) {
      sum += dryGrams[i];
    }
    return sum;
  }

  /** Meals between two days at which it ate anything. */
  int meals(int from, int to) {
    int sum = 0;
    for (int day = from; day < to; day++) {
      sum += meals[day];
    }
    return sum;
  }

  /** Whether any food between two days brought a supplement. */
  boolean hadWith(String supplement, int from, int to) {
    boolean @Nullable [] on = brought.get(supplement);
    for (int day = from; on != null && day < to; day++) {
      if (on[day]) {
        return true;
      }
    }
    return false;
  }
}
