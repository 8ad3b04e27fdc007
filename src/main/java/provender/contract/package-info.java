/**
 * In which words do others ask the engine, and in which does it answer? JSON in, JSON out, the same on server and phone.
 *
 * <p>Entry: {@link provender.contract.TankBook} for a tank's journal, {@link provender.contract.Calculation} for single
 * calculations without any tank.
 *
 * <p>Decided: this package is compiled twice, like the engine, so that a script, the server and the phone read the same
 * names, refuse the same faults and get the same answers. Answers are trees of maps and lists; whoever calls writes them
 * out as JSON.
 */
@NullMarked
package provender.contract;

import org.jspecify.annotations.NullMarked;
