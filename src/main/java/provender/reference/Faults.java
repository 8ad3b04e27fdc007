package provender.reference;

import java.util.ArrayList;
import java.util.List;

/** The faults found so far. */
final class Faults {
  private final List<Fault> found = new ArrayList<>();

  void add(Table table, int line, String column, String says) {
    found.add(new Fault(table.file(), line, column, says));
  }

  void refuseIfAny() {
    if (!found.isEmpty()) throw new ReferenceRefused(found);
  }
}
