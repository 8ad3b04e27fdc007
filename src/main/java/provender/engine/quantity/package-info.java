/**
 * In which units do we speak? Masses, energies, days and honest ranges, each checked when it is made.
 *
 * <p>Entry: {@link provender.engine.quantity.Energy}, {@link
 * provender.engine.quantity.Range}, {@link provender.engine.quantity.Day} and {@link provender.engine.quantity.Moment}.
 *
 * <p>Decided: days are counted from 1970-01-01 and read from the text of a time as the keeper's clock showed it, so the
 * engine needs no calendar library and no time-zone data.
 */
@NullMarked
package provender.engine.quantity;

import org.jspecify.annotations.NullMarked;
