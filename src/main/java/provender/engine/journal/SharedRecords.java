package provender.engine.journal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import provender.engine.node.Node;
import provender.engine.quantity.Moment;

/** The records that keepers share (tank, fish, measures), each the sum of the standing changes to it, field by field. */
final class SharedRecords {
  private final Map<String, Map<String, Map<String, Kept>>> changes = new HashMap<>();
  /** As last folded, by record and key; forgotten when anything may have changed. */
  private final Map<String, Merge> folded = new HashMap<>();

  void take(Entry entry, Kept kept) {
    String record = entry.body().text("record", "");
    String key = entry.body().text("key", "");
    moved();
    changes
        .computeIfAbsent(record, name -> new HashMap<>())
        .computeIfAbsent(key, name -> new LinkedHashMap<>())
        .put(entry.id(), kept);
  }

  /** The keys of one sort of record, in alphabetical order; one whose every change was taken back never was. */
  List<String> keys(String record) {
    List<String> keys = new ArrayList<>();
    for (String key : changes.getOrDefault(record, Map.of()).keySet()) {
      if (!folded(record, key).isEmpty()) {
        keys.add(key);
      }
    }
    keys.sort(String::compareTo);
    return keys;
  }

  /** An entry was amended, taken back or brought back. */
  void moved() {
    folded.clear();
  }

  private Merge folded(String record, String key) {
    return folded.computeIfAbsent(record + "\n" + key, name -> new Merge(record, standing(record, key, null)));
  }

  private List<Entry> standing(String record, String key, @Nullable Moment upTo) {
    List<Entry> standing = new ArrayList<>();
    for (Kept kept : changes.getOrDefault(record, Map.of()).getOrDefault(key, Map.of()).values()) {
      Entry entry = kept.entry();
      Moment at = kept.at();
      boolean inTime = upTo == null || (at != null && at.compareTo(upTo) <= 0);
      if (entry != null && !kept.isWithdrawn() && inTime) {
        standing.add(entry);
      }
    }
    standing.sort(Kept::byRank);
    return standing;
  }

  /** When a record was changed, oldest first, each moment once. */
  List<Moment> moments(String record, String key) {
    List<Moment> moments = new ArrayList<>();
    for (Kept kept : changes.getOrDefault(record, Map.of()).getOrDefault(key, Map.of()).values()) {
      Moment at = kept.at();
      if (kept.entry() != null && !kept.isWithdrawn() && at != null && !moments.contains(at)) {
        moments.add(at);
      }
    }
    moments.sort(Moment::compareTo);
    return moments;
  }

  /** What stood at a moment, as far as is known today. */
  Map<String, Field> fieldsAt(String record, String key, Moment at) {
    return new Merge(record, standing(record, key, at)).fields();
  }

  /** A field's standing value with the entry that gave it: the latest change of that field. */
  record Field(Object value, Entry from) {
    Conflict.Side side() {
      return new Conflict.Side(from.id(), from.by(), value);
    }
  }

  Map<String, Field> fields(String record, String key) {
    return folded(record, key).fields();
  }

  /** Changes to fields that can harm, made without having seen what stood: what stands stays until a person decides. */
  List<Conflict> conflicts() {
    List<Conflict> conflicts = new ArrayList<>();
    for (String record : changes.keySet()) {
      for (String key : keys(record)) {
        conflicts.addAll(conflicts(record, key));
      }
    }
    return conflicts;
  }

  /** The open conflicts of one record. */
  List<Conflict> conflicts(String record, String key) {
    List<Conflict> conflicts = new ArrayList<>();
    Merge merged = folded(record, key);
    for (String field : merged.open()) {
      Field stands = merged.fields().get(field);
      Field other = merged.waiting(field);
      if (stands != null && other != null) {
        double seen = Math.max(stands.from().place(), other.from().place());
        conflicts.add(new Conflict(record, key, field, stands.side(), other.side(), seen));
      }
    }
    return conflicts;
  }

  /** The places of what stands in the fields that can harm, by record, key and field, for whoever changes them next. */
  List<Guarded> guarded() {
    List<Guarded> guarded = new ArrayList<>();
    for (String record : changes.keySet()) {
      for (String key : keys(record)) {
        for (Map.Entry<String, Field> field : fields(record, key).entrySet()) {
          if (Merge.isHarmful(record, field.getKey())) {
            guarded.add(new Guarded(record, key, field.getKey(), field.getValue().from().place()));
          }
        }
      }
    }
    return guarded;
  }

  static double number(Map<String, Field> fields, String name, double otherwise) {
    Field field = fields.get(name);
    return field != null && field.value() instanceof Double number ? number : otherwise;
  }

  static String text(Map<String, Field> fields, String name, String otherwise) {
    Field field = fields.get(name);
    return field != null && field.value() instanceof String text ? text : otherwise;
  }

  static List<Node> nodes(@Nullable Field field) {
    List<Node> nodes = new ArrayList<>();
    if (field != null && field.value() instanceof List<?> list) {
      for (Object item : list) {
        if (item instanceof Node node) {
          nodes.add(node);
        }
      }
    }
    return nodes;
  }

  static List<Double> numbers(@Nullable Field field) {
    List<Double> numbers = new ArrayList<>();
    if (field != null && field.value() instanceof List<?> list) {
      for (Object item : list) {
        if (item instanceof Double number) {
          numbers.add(number);
        }
      }
    }
    return numbers;
  }

  static List<String> texts(@Nullable Field field) {
    List<String> texts = new ArrayList<>();
    if (field != null && field.value() instanceof List<?> list) {
      for (Object item : list) {
        if (item instanceof String text) {
          texts.add(text);
        }
      }
    }
    return texts;
  }
}
