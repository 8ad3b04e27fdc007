/**
 * What did someone write? A read-only view of one JSON object, the same whether the server parsed it or the phone holds it.
 *
 * <p>Entry: {@link provender.engine.node.Node}, with {@link provender.engine.node.MapNode} for trees of maps and lists.
 *
 * <p>Decided: one reading code for both sides instead of one per side; entries keep fields that nobody knows yet, so they
 * are read through this view and never turned into fixed shapes.
 */
@NullMarked
package provender.engine.node;

import org.jspecify.annotations.NullMarked;
