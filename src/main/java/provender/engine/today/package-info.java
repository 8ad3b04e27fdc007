/**
 * How do things stand right now? One tank's journal read at one moment: ration, shares, diets and findings.
 *
 * <p>Entry: {@link provender.engine.today.Today}.
 *
 * <p>Decided: nothing is stored that can be reckoned again. The view looks back 92 days, so ten years of journal cost no
 * more than three months. The moment comes in from outside; nothing here asks a clock.
 */
@NullMarked
package provender.engine.today;

import org.jspecify.annotations.NullMarked;
