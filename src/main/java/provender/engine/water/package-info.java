/**
 * What does feeding do to the water? Nitrogen and phosphorus in, what fish keep, what exchanges and export take out, and
 * what nitrate and phosphate come to.
 *
 * <p>Entry: {@link provender.engine.water.Load} for what goes in, {@link provender.engine.water.Course} for how a
 * concentration runs, {@link provender.engine.water.ExportFit} for what the tests say of the tank's own export.
 *
 * <p>Decided: all nitrogen ends as nitrate in the long run, since faeces and leftovers are mineralised too; export is fitted
 * and never assumed, because no published rate holds for a display.
 */
@NullMarked
package provender.engine.water;

import org.jspecify.annotations.NullMarked;
