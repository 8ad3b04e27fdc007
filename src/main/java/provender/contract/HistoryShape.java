package provender.contract;

import java.util.ArrayList;
import java.util.List;
import provender.engine.journal.Version;

/** What became of one entry, as JSON. */
final class HistoryShape {
  private HistoryShape() {}

  static List<Object> of(List<Version> history) {
    List<Object> list = new ArrayList<>();
    for (Version one : history) {
      list.add(
          Shapes.object(
              "entry", one.entry(),
              "deed", one.deed(),
              "by", one.by(),
              "happenedAt", one.happenedAt(),
              "seq", one.place()));
    }
    return list;
  }
}
