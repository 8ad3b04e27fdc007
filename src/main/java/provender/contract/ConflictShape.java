package provender.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import provender.engine.journal.Conflict;
import provender.engine.journal.Guarded;

/** Changes that wait for a person, and what a change must have seen, as JSON. */
final class ConflictShape {
  private ConflictShape() {}

  static List<Object> all(List<Conflict> conflicts) {
    List<Object> list = new ArrayList<>();
    for (Conflict one : conflicts) {
      list.add(
          Shapes.object(
              "record", one.record(),
              "key", one.key(),
              "field", one.field(),
              "standing", side(one.standing()),
              "other", side(one.other()),
              "seen", one.seen()));
    }
    return list;
  }

  private static Map<String, Object> side(Conflict.Side side) {
    return Shapes.object("entry", side.entry(), "by", side.by(), "value", side.value());
  }

  static List<Object> guarded(List<Guarded> guarded) {
    List<Object> list = new ArrayList<>();
    for (Guarded one : guarded) {
      list.add(
          Shapes.object("record", one.record(), "key", one.key(), "field", one.field(), "place", one.place()));
    }
    return list;
  }
}
