package provender.engine.journal;

import org.jspecify.annotations.Nullable;
import provender.engine.node.Node;

/**
 * One hand on an entry: who wrote, changed, took back or brought it back, and what they set.
 *
 * @param place where the server put it; 0 while it has not been sent
 * @param set the body as first written, or the fields an amendment set; null when nothing was set
 */
public record Version(String entry, Deed deed, String by, String happenedAt, String recordedAt, double place, @Nullable Node set) {

  public enum Deed {
    WRITTEN,
    AMENDED,
    WITHDRAWN,
    RESTORED
  }
}
