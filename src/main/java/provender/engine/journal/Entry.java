package provender.engine.journal;

import java.util.Map;
import provender.engine.node.MapNode;
import provender.engine.node.Node;

/** One line of the journal as it was written; unknown fields stay in the node. */
final class Entry {
  private static final double AFTER_ALL_SENT = 1e15;
  private static final Node NOTHING = new MapNode(Map.of());

  private final Node written;
  private final String id;
  private final String kind;
  private final double rank;

  Entry(Node written) {
    this.written = written;
    this.id = written.text("id", "");
    this.kind = written.text("kind", "");
    double seq = written.number("seq", 0);
    this.rank = seq > 0 ? seq : written.number("deviceSeq", 0) + AFTER_ALL_SENT;
  }

  String id() {
    return id;
  }

  String kind() {
    return kind;
  }

  /** The place in which changes are laid over each other: the server's order, then this phone's own unsent ones. */
  double rank() {
    return rank;
  }

  /** The place the server gave it, 0 while it has none. */
  double place() {
    return isSent() ? rank : 0;
  }

  boolean isSent() {
    return rank < AFTER_ALL_SENT;
  }

  String device() {
    return written.text("device", "");
  }

  /** The place of the change to a field that whoever wrote this had seen; 0 for none. */
  double saw(String field) {
    Node saw = body().node("saw");
    return saw == null ? 0 : saw.number(field, 0);
  }

  String by() {
    return written.text("by", "");
  }

  String happenedAt() {
    return written.text("happenedAt", "");
  }

  Node written() {
    return written;
  }

  Node body() {
    Node body = written.node("body");
    return body == null ? NOTHING : body;
  }
}
