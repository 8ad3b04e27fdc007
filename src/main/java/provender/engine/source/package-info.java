/**
 * Where does a number come from? Constants with their source and standing, and the steps that explain a figure.
 *
 * <p>Entry: {@link provender.engine.source.Figure} (a number with its range, basis and reasons), {@link
 * provender.engine.source.Step} and {@link provender.engine.source.Constants}.
 *
 * <p>Decided: a step holds facts, never sentences; the screen words them from one text file per language.
 */
@NullMarked
package provender.engine.source;

import org.jspecify.annotations.NullMarked;
