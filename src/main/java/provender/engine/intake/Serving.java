package provender.engine.intake;

import provender.engine.food.Food;

/**
 * One helping as the fish at a table are reckoned to have eaten it.
 *
 * @param meal the how-manieth meal of the day it belonged to
 * @param gramsEaten one per line of the roster, in their order; not to be changed
 */
public record Serving(int meal, Helping helping, Food food, double[] gramsEaten) {

  public double kj(int eater) {
    return gramsEaten[eater] * food.kjPerGram();
  }
}
