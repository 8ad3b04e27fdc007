/**
 * What do the published tables say? Foods, species, guilds, rules and constants, found by their keys.
 *
 * <p>Entry: {@link provender.engine.reference.Reference}, read from the tables by {@link
 * provender.engine.reference.Tables}.
 *
 * <p>Decided: the tables cross into the engine as plain rows, so that the server's files and the phone's download go
 * through the same reading.
 */
@NullMarked
package provender.engine.reference;

import org.jspecify.annotations.NullMarked;
