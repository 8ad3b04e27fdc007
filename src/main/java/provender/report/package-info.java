/**
 * How does the server say what it holds? Reasons in the sentences of {@code shared/text}, the same that the phone shows,
 * and a journal as a table.
 *
 * <p>Entry: {@link provender.report.WhyInWords} for reasons, {@link provender.report.JournalCsv} for a journal as a table.
 *
 * <p>Decided: the engine gives facts and no sentences, so a figure is explained in any language for which there is a file.
 */
@NullMarked
package provender.report;

import org.jspecify.annotations.NullMarked;
