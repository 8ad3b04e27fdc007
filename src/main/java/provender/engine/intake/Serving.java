package provender.engine.intake;

import provender.engine.food.Food;

/**
 * One helping as the fish at a table are reckoned to have eaten it.
 *
 * @param meal the how-manieth meal of the day it belonged to
 * @param gramsEaten one per line of the roster, in their order; the table writes the next helping into it, unless it is {@link #kept}
 */
public record Serving(int meal, Helping helping, Food food, double[] gramsEaten) {

  /** The same with numbers of its own, to be remembered when the table goes on. */
  public Serving kept() {
    return new Serving(meal, helping, food, gramsEaten.clone());
  }

  public double grams(int eater) {
    return gramsEaten[eater];
  }

  public double kj(int eater) {
    return gramsEaten[eater] * food.kjPerGram();
  }
}
