package provender.reference;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Keys: none twice in its own table, none named elsewhere that is not there. */
final class References {
  private final Map<Table, List<Row>> rows;
  private final Faults faults;
  private final Map<String, Set<String>> known = new HashMap<>();

  References(Map<Table, List<Row>> rows, Faults faults) {
    this.rows = rows;
    this.faults = faults;
  }

  void check() {
    rows.forEach(this::noKeyTwice);
    rows.forEach(this::everyNamedKeyIsKnown);
  }

  private void noKeyTwice(Table table, List<Row> rows) {
    var seen = new HashMap<String, Integer>();
    for (var row : rows) {
      var key = String.join(" + ", table.key().stream().map(row::text).toList());
      var first = seen.putIfAbsent(key, row.line());
      if (first != null)
        faults.add(table, row.line(), table.key().get(0), "'" + key + "' stands already in line " + first);
    }
    // A table that could not be read is a fault already; every key pointing at it would only echo that.
    if (!rows.isEmpty()) known.put(table.name(), seen.keySet());
  }

  private void everyNamedKeyIsKnown(Table table, List<Row> rows) {
    for (var column : table.columns())
      if (column.form() == Column.Form.KEYS) for (var row : rows) follow(table, column, row);
  }

  private void follow(Table table, Column column, Row row) {
    var cell = row.text(column.name());
    var takes = known.get(column.from());
    if (cell.isEmpty() || takes == null) return;
    for (var key : cell.split("\\|", -1))
      if (!takes.contains(key) && !column.words().contains(key))
        faults.add(table, row.line(), column.name(), "'" + key + "' is not in the table " + column.from());
  }
}
