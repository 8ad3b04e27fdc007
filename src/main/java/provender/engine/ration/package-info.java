/**
 * How much food is due today? Digestible energy from mass and temperature, with the width of what is known.
 *
 * <p>Entry: {@link provender.engine.ration.Ration}; {@link provender.engine.ration.PublishedModel} for the lines of single
 * papers, {@link provender.engine.ration.TurfGrazer} for tangs on turf, {@link provender.engine.ration.TankFactor} for what
 * weighings say.
 *
 * <p>Decided: 40 kJ per kg^0.80 and day at 27 °C with a band of 30 to 70, since six published lines disagree by a factor
 * of two and no tang, angelfish, butterflyfish or trigger was ever measured. The band is shown, never hidden.
 */
@NullMarked
package provender.engine.ration;

import org.jspecify.annotations.NullMarked;
