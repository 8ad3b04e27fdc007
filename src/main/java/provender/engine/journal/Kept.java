package provender.engine.journal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import provender.engine.node.Node;
import provender.engine.node.Patched;
import provender.engine.quantity.Moment;
import provender.engine.reference.Reference;

/** An entry with everything later hands did to it. */
final class Kept {
  private static final String IN_BODY = "body.";

  private @Nullable Entry entry;
  private final Map<String, Entry> amendments = new HashMap<>();
  private final Map<String, Entry> withdrawals = new HashMap<>();
  private @Nullable Moment at;
  private @Nullable Feeding feeding;
  private @Nullable Reference readWith;

  void is(Entry written) {
    entry = written;
    changed();
  }

  void amendedBy(Entry amendment) {
    amendments.put(amendment.id(), amendment);
    changed();
  }

  void withdrawnBy(Entry withdrawal) {
    withdrawals.put(withdrawal.id(), withdrawal);
  }

  private void changed() {
    at = null;
    feeding = null;
  }

  /** The entry as a feeding, read once; null when it cannot be one. */
  @Nullable Feeding feeding(Reference known) {
    if (feeding == null || readWith != known) {
      feeding = Feeding.read(this, known);
      readWith = known;
    }
    return feeding;
  }

  /** The entry itself, or null while only changes to it have arrived. */
  @Nullable Entry entry() {
    return entry;
  }

  boolean isCorrected() {
    return !amendments.isEmpty();
  }

  /** This entry and every later one that changed it, took it back or brought it back, in the order in which they count. */
  List<Node> history() {
    List<Entry> hands = inOrder();
    hands.addAll(withdrawals.values());
    hands.sort(Kept::byRank);
    List<Node> history = new ArrayList<>();
    if (entry != null) {
      history.add(entry.written());
    }
    for (Entry hand : hands) {
      history.add(hand.written());
    }
    return history;
  }

  private static boolean takesBack(Entry withdrawal) {
    return !Boolean.FALSE.equals(withdrawal.body().at("withdrawn"));
  }

  boolean isWithdrawn() {
    Entry last = last(withdrawals);
    return last != null && takesBack(last);
  }

  /** When it happened, after corrections; null when no time can be read from it. */
  @Nullable Moment at() {
    if (at == null && entry != null) {
      String text = entry.happenedAt();
      for (Entry amendment : inOrder()) {
        Node set = amendment.body().node("set");
        text = set == null ? text : set.text("happenedAt", text);
      }
      try {
        at = Moment.parse(text);
      } catch (IllegalArgumentException unreadable) {
        return null;
      }
    }
    return at;
  }

  /** The body with each amended field as its latest amendment left it. */
  Node body(Entry written) {
    if (amendments.isEmpty()) {
      return written.body();
    }
    Map<String, Object> over = new HashMap<>();
    for (Entry amendment : inOrder()) {
      Node set = amendment.body().node("set");
      if (set != null) {
        for (String name : set.names()) {
          Object value = set.at(name);
          if (name.startsWith(IN_BODY) && value != null) {
            over.put(name.substring(IN_BODY.length()), value);
          }
        }
      }
    }
    return new Patched(written.body(), over);
  }

  private List<Entry> inOrder() {
    List<Entry> ordered = new ArrayList<>(amendments.values());
    ordered.sort(Kept::byRank);
    return ordered;
  }

  private static @Nullable Entry last(Map<String, Entry> changes) {
    Entry last = null;
    for (Entry change : changes.values()) {
      if (last == null || byRank(change, last) > 0) {
        last = change;
      }
    }
    return last;
  }

  /** By place, and by id where two phones' unsent changes meet, so that every copy decides alike. */
  static int byRank(Entry one, Entry other) {
    int byRank = Double.compare(one.rank(), other.rank());
    return byRank != 0 ? byRank : one.id().compareTo(other.id());
  }
}
