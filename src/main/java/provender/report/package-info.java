/**
 * How does the server say what the engine found? In the sentences of {@code shared/text}, the same that the phone shows.
 *
 * <p>Entry: {@link provender.report.WhyInWords}.
 *
 * <p>Decided: the engine gives facts and no sentences, so a figure is explained in any language for which there is a file.
 */
@NullMarked
package provender.report;

import org.jspecify.annotations.NullMarked;
