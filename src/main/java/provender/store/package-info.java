/**
 * Where is everything kept? Households, people and journals in one SQL database, through Panache.
 *
 * <p>Entry: none of its own; it fills the ports {@link provender.sync.JournalStore} and {@link
 * provender.people.PeopleStore}, and the container hands it to whoever asks for those.
 *
 * <p>Decided: the tank's row is the counter of its journal and is locked in the transaction that writes, so a reader can
 * never pass over an entry that commits late. An entry's text is kept whole; only what is searched has a column.
 */
@NullMarked
package provender.store;

import org.jspecify.annotations.NullMarked;
