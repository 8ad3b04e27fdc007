package provender.engine.journal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import provender.engine.node.Node;

/** The records that keepers share (tank, fish, measures), each the sum of the changes made to it, field by field. */
final class SharedRecords {
  private final Map<String, Map<String, Map<String, Entry>>> changes = new HashMap<>();

  void take(Entry entry) {
    String record = entry.body().text("record", "");
    String key = entry.body().text("key", "");
    changes
        .computeIfAbsent(record, name -> new TreeMap<>())
        .computeIfAbsent(key, name -> new LinkedHashMap<>())
        .put(entry.id(), entry);
  }

  /** The keys of one sort of record, in alphabetical order. */
  List<String> keys(String record) {
    return new ArrayList<>(changes.getOrDefault(record, Map.of()).keySet());
  }

  /** A field's standing value with the entry that gave it: the latest change of that field. */
  record Field(Object value, Entry from) {}

  Map<String, Field> fields(String record, String key) {
    List<Entry> ordered = new ArrayList<>(changes.getOrDefault(record, Map.of()).getOrDefault(key, Map.of()).values());
    ordered.sort(Kept::byRank);
    Map<String, Field> fields = new HashMap<>();
    for (Entry entry : ordered) {
      Node set = entry.body().node("set");
      if (set != null) {
        for (String name : set.names()) {
          Object value = set.at(name);
          if (value != null) {
            fields.put(name, new Field(value, entry));
          }
        }
      }
    }
    return fields;
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
