package provender.reference;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One line of a table: numbers as Double, text as String, empty cells left out. */
record Row(int line, Map<String, Object> values) {

  String text(String column) {
    return values.get(column) instanceof String text ? text : "";
  }

  @Nullable Double number(String column) {
    return values.get(column) instanceof Double number ? number : null;
  }

  /** True when every one of these columns holds a number. */
  boolean holds(String... columns) {
    for (var column : columns) if (number(column) == null) return false;
    return true;
  }

  double sum(String... columns) {
    double sum = 0;
    for (var column : columns) if (values.get(column) instanceof Double number) sum += number;
    return sum;
  }
}
