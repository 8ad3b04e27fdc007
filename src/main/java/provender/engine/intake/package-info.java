/**
 * Who got what? One feeding split among the fish that eat from the same table.
 *
 * <p>Entry: {@link provender.engine.intake.MealShares} for the split, {@link provender.engine.intake.Meal} for what was
 * given, {@link provender.engine.intake.Sightings} for what people saw, {@link provender.engine.intake.Selectivity} for the
 * usual indices of choice.
 *
 * <p>Decided: by metabolic mass, preference and dominance, capped at what a fish can take, the excess shared again. No
 * paper has validated any such split in a display; everything made from it is worded as an estimate.
 */
@NullMarked
package provender.engine.intake;

import org.jspecify.annotations.NullMarked;
