package provender.engine.journal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import provender.engine.node.Node;

/**
 * The changes to a tank's shared records, for whoever must answer a change the moment it arrives. The answer follows from the
 * same {@link Merge} that every copy of the journal folds with, so both always agree.
 */
public final class SharedChanges {
  private final Map<String, Kept> byId = new HashMap<>();
  private final SharedRecords records = new SharedRecords();

  /** Whether an entry changes a field that can harm. */
  public static boolean canHarm(Node written) {
    Entry entry = new Entry(written);
    Node set = entry.body().node("set");
    if (!entry.kind().equals("record") || set == null) {
      return false;
    }
    String record = entry.body().text("record", "");
    for (String field : set.names()) {
      if (Merge.isHarmful(record, field)) {
        return true;
      }
    }
    return false;
  }

  /** Takes a change of a record, or the withdrawal of one, with the place it has; other kinds change nothing here. */
  public void take(Node written) {
    Entry entry = new Entry(written);
    if (entry.kind().equals("record")) {
      Kept kept = kept(entry.id());
      kept.is(entry);
      records.take(entry, kept);
    } else if (entry.kind().equals("withdrawal")) {
      kept(entry.body().text("entry", "")).withdrawnBy(entry);
      records.moved();
    }
  }

  /** The fields of a change already taken that wait for a person, because its writer had not seen what stands there. */
  public List<String> waiting(Node written) {
    Entry entry = new Entry(written);
    List<String> fields = new ArrayList<>();
    for (Conflict conflict : records.conflicts(entry.body().text("record", ""), entry.body().text("key", ""))) {
      if (conflict.other().entry().equals(entry.id())) {
        fields.add(conflict.field());
      }
    }
    return fields;
  }

  private Kept kept(String id) {
    return byId.computeIfAbsent(id, key -> new Kept());
  }
}
