/**
 * What of a picture that a phone sends is kept? Its pixels, as a JPEG made anew, beside the entry they belong to.
 *
 * <p>Entry: {@link provender.photo.Photos}; the port to wherever they are kept is {@link provender.photo.PhotoStore}.
 *
 * <p>Decided: a photo has the id of its journal entry (kind {@code photo}) and comes after it, by an address of its own, so
 * that no picture ever holds up a feeding. What is sent is believed in nothing: its kind is told by its first bytes, its size
 * is read before its pixels are, and only a JPEG written here from those pixels is stored. No place, time or camera stays in it.
 */
@NullMarked
package provender.photo;

import org.jspecify.annotations.NullMarked;
