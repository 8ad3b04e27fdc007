package provender.contract;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import provender.engine.journal.Version;
import provender.engine.node.Node;

/** What became of one entry, as JSON. */
final class HistoryShape {
  private HistoryShape() {}

  static List<Object> of(List<Version> history) {
    List<Object> list = new ArrayList<>();
    for (Version one : history) {
      list.add(
          Shapes.object(
              "entry", one.entry(),
              "deed", word(one.deed()),
              "by", one.by(),
              "happenedAt", one.happenedAt(),
              "recordedAt", one.recordedAt(),
              "seq", one.place(),
              "set", one.set() == null ? Map.of() : plain(one.set())));
    }
    return list;
  }

  private static String word(Version.Deed deed) {
    return switch (deed) {
      case WRITTEN -> "written";
      case AMENDED -> "amended";
      case WITHDRAWN -> "withdrawn";
      case RESTORED -> "restored";
    };
  }

  private static Object plain(@Nullable Object value) {
    if (value instanceof Node node) {
      Map<String, Object> fields = new LinkedHashMap<>();
      for (String name : node.names()) {
        fields.put(name, plain(node.at(name)));
      }
      return fields;
    }
    if (value instanceof List<?> list) {
      List<Object> items = new ArrayList<>();
      for (Object item : list) {
        items.add(plain(item));
      }
      return items;
    }
    return value == null ? "" : value;
  }
}
