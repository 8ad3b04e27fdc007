/**
 * Are the published tables fit to be used, and what do they say?
 *
 * <p>Entry: {@link provender.reference.ReferenceFiles}. {@code Tables} declares, table by table, which columns there are
 * and which source and standing each number answers to; {@code TableRules} holds what must be true of whole rows.
 *
 * <p>Decided: a table with one bad cell is refused whole, and every fault is named at once. A number that nobody can
 * trace is worse than none, and whoever mends a table should not have to start it ten times.
 *
 * <p>Decided: a column that is not declared is refused too, or numbers could slip in without a source.
 */
@NullMarked
package provender.reference;

import org.jspecify.annotations.NullMarked;
