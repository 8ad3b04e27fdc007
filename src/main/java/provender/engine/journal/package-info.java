/**
 * What happened in this tank? Entries, in any order and any number of times, folded into one state.
 *
 * <p>Entry: {@link provender.engine.journal.Journal}.
 *
 * <p>Decided: entries are a set by id; the place the server gave them (seq) decides between two changes of one field, and
 * what this phone has not sent yet comes after everything sent. No clock decides anything. A withdrawal beats an
 * amendment and can be taken back.
 */
@NullMarked
package provender.engine.journal;

import org.jspecify.annotations.NullMarked;
