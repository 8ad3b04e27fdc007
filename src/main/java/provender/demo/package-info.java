/**
 * What is there to see before anyone has logged anything? Invented tanks and journals, laid out up to today.
 *
 * <p>Entry: {@link provender.demo.DemoScenario}; at start, {@code provender.demo=true} loads it into an empty store.
 *
 * <p>Decided: the demo's days count back from the day it is first started, so that its troubles are today's. It goes
 * through the same push as every phone, and its passwords are printed, which is why it only listens on this machine.
 */
@NullMarked
package provender.demo;

import org.jspecify.annotations.NullMarked;
