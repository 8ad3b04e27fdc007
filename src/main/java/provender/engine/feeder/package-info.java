/**
 * How much does an auto-feeder really give? Weighed drops and their spread, the portions that come closest to a wanted day,
 * how long the hopper lasts, and whether what left it is what should have fallen.
 *
 * <p>Entry: {@link provender.engine.feeder.Drops} for what one drop weighs, {@link provender.engine.feeder.Portions} for a
 * schedule, {@link provender.engine.feeder.AutoFeeder} for a feeder with its history.
 *
 * <p>Decided: Student's t, because ten weighings are many for a person with wet hands and few for a normal distribution.
 * Nothing here changes a feeder; portions are proposed, and a person sets the machine.
 */
@NullMarked
package provender.engine.feeder;

import org.jspecify.annotations.NullMarked;
