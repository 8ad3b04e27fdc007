package provender.reference;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Holds the cells of one line against their columns, and turns them into values. */
final class Cells {
  private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?([eE]-?\\d+)?");

  private final Table table;
  private final int line;
  private final Map<String, String> cells;
  private final Faults faults;

  Cells(Table table, int line, Map<String, String> cells, Faults faults) {
    this.table = table;
    this.line = line;
    this.cells = cells;
    this.faults = faults;
  }

  Row read() {
    var values = new LinkedHashMap<String, Object>();
    for (var column : table.columns()) {
      var cell = cell(column.name());
      if (!cell.isEmpty()) read(column, cell, values);
      else if (column.required()) fault(column, "is empty");
    }
    return new Row(line, values);
  }

  private void read(Column column, String cell, Map<String, Object> values) {
    switch (column.form()) {
      case NUMBER -> number(column, cell, values);
      case WORD -> words(column, cell, values);
      case SHARES -> shares(column, cell, values);
      case TEXT, KEYS -> values.put(column.name(), cell);
    }
  }

  private void number(Column column, String cell, Map<String, Object> values) {
    if (NUMBER.matcher(cell).matches()) values.put(column.name(), Double.valueOf(cell));
    else fault(column, "takes a number of zero or more, not '" + cell + "'");
    answersToSomebody(column);
  }

  private void answersToSomebody(Column column) {
    if (cell(column.source()).isEmpty()) fault(column, "has no source: " + column.source() + " is empty");
    if (cell(column.standing()).isEmpty()) fault(column, "has no standing: " + column.standing() + " is empty");
  }

  private void words(Column column, String cell, Map<String, Object> values) {
    for (var word : cell.split("\\|", -1))
      if (!column.words().contains(word)) fault(column, "takes " + sorted(column.words()) + ", not '" + word + "'");
    values.put(column.name(), cell);
  }

  private void shares(Column column, String cell, Map<String, Object> values) {
    double sum = 0;
    for (var share : cell.split("\\|", -1)) {
      var pair = share.split(":", -1);
      if (pair.length != 2 || !NUMBER.matcher(pair[1]).matches()) {
        fault(column, "takes name:part, not '" + share + "'");
        return;
      }
      if (!column.words().contains(pair[0])) fault(column, "names an unknown component '" + pair[0] + "'");
      sum += Double.parseDouble(pair[1]);
    }
    if (Math.abs(sum - 1) > 1e-6) fault(column, "must add up to 1, adds up to " + sum);
    answersToSomebody(column);
    values.put(column.name(), cell);
  }

  private String cell(String column) {
    return cells.getOrDefault(column, "");
  }

  private static String sorted(Set<String> words) {
    return String.join(", ", words.stream().sorted().toList());
  }

  private void fault(Column column, String says) {
    faults.add(table, line, column.name(), says);
  }
}
