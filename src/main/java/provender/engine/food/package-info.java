/**
 * What is in a food? Composition as fed, digestible energy per gram, and the diet components it brings.
 *
 * <p>Entry: {@link provender.engine.food.Food} and {@link provender.engine.food.FoodEnergy}.
 *
 * <p>Decided: everything is reckoned from composition as fed. Percent-of-body-weight rules hide a factor of nine between
 * wet seaweed and dry pellet, so grams are only ever the last step.
 */
@NullMarked
package provender.engine.food;

import org.jspecify.annotations.NullMarked;
