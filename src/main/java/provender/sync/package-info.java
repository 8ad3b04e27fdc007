/**
 * How do entries travel? What is pushed is kept once and given its place; what is pulled comes in that order, without holes.
 *
 * <p>Entry: {@link provender.sync.Push} and {@link provender.sync.Pull}; the port to wherever entries are kept is {@link
 * provender.sync.JournalStore}.
 *
 * <p>Decided: each entry is answered for itself, so one that is refused never stands in the way of the next. An entry's
 * text is kept as it was written, with fields and kinds nobody knows yet.
 */
@NullMarked
package provender.sync;

import org.jspecify.annotations.NullMarked;
