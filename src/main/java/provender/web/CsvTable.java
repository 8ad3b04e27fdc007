package provender.web;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Collection;
import java.util.Iterator;
import java.util.Map;
import java.util.TreeMap;

/**
 * Entries as rows of CSV (RFC 4180). A text that a spreadsheet would take for a formula gets an apostrophe in front; numbers
 * are written digit by digit as they were sent.
 */
final class CsvTable {
  private static final String FORMULA_BEGINS = "=+-@\t\r";
  private static final String LINE_END = "\r\n";

  private final Collection<String> columns;
  private final StringBuilder text = new StringBuilder();

  CsvTable(Collection<String> columns) {
    this.columns = columns;
    Iterator<String> names = columns.iterator();
    while (names.hasNext()) {
      text.append(quoted(guarded(names.next()))).append(names.hasNext() ? "," : LINE_END);
    }
  }

  /** An entry's fields by their path, such as body.items.0.grams. */
  static Map<String, JsonNode> cells(JsonNode entry) {
    Map<String, JsonNode> cells = new TreeMap<>();
    lay("", entry, cells);
    return cells;
  }

  private static void lay(String path, JsonNode value, Map<String, JsonNode> cells) {
    String inner = path.isEmpty() ? "" : path + ".";
    if (value.isObject()) {
      value.fields().forEachRemaining(field -> lay(inner + field.getKey(), field.getValue(), cells));
    } else if (value.isArray()) {
      for (int i = 0; i < value.size(); i++) {
        lay(inner + i, value.get(i), cells);
      }
    } else {
      cells.put(path, value);
    }
  }

  void row(Map<String, JsonNode> cells) {
    Iterator<String> names = columns.iterator();
    while (names.hasNext()) {
      JsonNode cell = cells.get(names.next());
      text.append(cell == null ? "" : written(cell)).append(names.hasNext() ? "," : LINE_END);
    }
  }

  private static String written(JsonNode cell) {
    return cell.isTextual() ? quoted(guarded(cell.asText())) : cell.isNull() ? "" : cell.toString();
  }

  private static String guarded(String cell) {
    return !cell.isEmpty() && FORMULA_BEGINS.indexOf(cell.charAt(0)) >= 0 ? "'" + cell : cell;
  }

  private static String quoted(String cell) {
    boolean plain = cell.chars().noneMatch(one -> one == ',' || one == '"' || one == '\r' || one == '\n');
    return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }

  String text() {
    return text.toString();
  }
}
