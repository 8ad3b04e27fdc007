/**
 * How much does an auto-feeder really give? Weighed drops, their spread, and what can be promised from them.
 *
 * <p>Entry: {@link provender.engine.feeder.Drops}.
 *
 * <p>Decided: Student's t, because ten weighings are many for a person with wet hands and few for a normal distribution.
 */
@NullMarked
package provender.engine.feeder;

import org.jspecify.annotations.NullMarked;
