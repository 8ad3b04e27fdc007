/**
 * What does each fish lack? What it got over the weeks against what its guild needs, and the findings that follow.
 *
 * <p>Entry: {@link provender.engine.diet.Review} for what was eaten, {@link provender.engine.diet.DietRules} for what is
 * wrong with it. The rules stand by family in {@code PlantRules}, {@code NutrientRules}, {@code VarietyRules}, {@code
 * EatingRules} and {@code EnergyRules}.
 *
 * <p>Decided: one method per rule, the method's name is the rule. One finding per cause: fish that lack the same thing
 * share a finding. Energy is judged for the whole table, and per fish only where a fish eats alone, because the split of
 * a common meal is an estimate that nobody has validated.
 */
@NullMarked
package provender.engine.diet;

import org.jspecify.annotations.NullMarked;
