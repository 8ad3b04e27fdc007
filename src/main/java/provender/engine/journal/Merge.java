package provender.engine.journal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import provender.engine.journal.SharedRecords.Field;
import provender.engine.node.Node;

/**
 * One shared record folded from its changes. Field by field the later change stands, except where a wrong value can harm: such
 * a field moves only for whoever had seen the value that stood. Otherwise what stands stays, and a person decides.
 */
final class Merge {
  /** What feeds fish while nobody looks, and what takes a fish off the table. */
  private static final List<String> HARMFUL = List.of("feeder.drops", "feeder.times", "feeder.running", "fish.status");

  private final String record;
  private final boolean empty;
  private final Map<String, Field> fields = new HashMap<>();
  private final Map<String, List<Field>> unseen = new HashMap<>();

  /** @param changes in the order in which they are laid over each other */
  Merge(String record, List<Entry> changes) {
    this.record = record;
    this.empty = changes.isEmpty();
    for (Entry change : changes) {
      Node set = change.body().node("set");
      if (set != null) {
        for (String name : set.names()) {
          Object value = set.at(name);
          if (value != null) {
            lay(name, value, change);
          }
        }
      }
    }
  }

  private void lay(String name, Object value, Entry change) {
    Field standing = fields.get(name);
    if (standing != null && isHarmful(record, name) && !sawIt(change, name, standing.from())) {
      unseen.computeIfAbsent(name, field -> new ArrayList<>()).add(new Field(value, change));
      return;
    }
    fields.put(name, new Field(value, change));
    List<Field> open = unseen.get(name);
    if (open != null) {
      List<Field> left = new ArrayList<>();
      for (Field other : open) {
        if (!sawIt(change, name, other.from())) {
          left.add(other);
        }
      }
      unseen.put(name, left);
    }
  }

  private static boolean sawIt(Entry change, String name, Entry before) {
    return change.device().equals(before.device()) || change.saw(name) >= before.rank();
  }

  static boolean isHarmful(String record, String name) {
    return HARMFUL.contains(record + "." + name);
  }

  /** Whether no change of it stands at all. */
  boolean isEmpty() {
    return empty;
  }

  Map<String, Field> fields() {
    return fields;
  }

  /** The last change of a field that still waits for a person; null where none does. */
  @Nullable Field waiting(String name) {
    List<Field> open = unseen.getOrDefault(name, List.of());
    return open.isEmpty() ? null : open.get(open.size() - 1);
  }

  /** The fields that wait for a person. */
  List<String> open() {
    List<String> names = new ArrayList<>();
    for (Map.Entry<String, List<Field>> field : unseen.entrySet()) {
      if (!field.getValue().isEmpty()) {
        names.add(field.getKey());
      }
    }
    return names;
  }
}
