package provender.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.SequenceWriter;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A journal as a table for a spreadsheet (RFC 4180): a line for each food of a feeding, one for every other entry, whose whole
 * body stands in the last column. Text that a spreadsheet would run as a formula gets an apostrophe; numbers stay numbers.
 */
public final class JournalCsv implements AutoCloseable {
  private static final List<String> COLUMNS =
      List.of("seq", "id", "kind", "happenedAt", "zone", "by", "receivedAt", "food", "grams", "measure", "count", "supplements",
          "fish", "leftoverGrams", "note", "body");
  private static final String STARTS_A_FORMULA = "=+-@\t\r";

  private final SequenceWriter lines;

  public JournalCsv(OutputStream out) throws IOException {
    CsvSchema.Builder schema = CsvSchema.builder().setUseHeader(true).setLineSeparator("\r\n");
    COLUMNS.forEach(schema::addColumn);
    ObjectWriter writer = new CsvMapper().writer(schema.build());
    this.lines = writer.writeValues(out);
  }

  /** @param entry as it is pulled, with its place */
  public void add(JsonNode entry) throws IOException {
    List<JsonNode> items = new ArrayList<>();
    if (entry.path("kind").asText().equals("feeding")) {
      entry.path("body").path("items").forEach(items::add);
    }
    if (items.isEmpty()) {
      lines.write(line(entry, null));
    }
    for (JsonNode item : items) {
      lines.write(line(entry, item));
    }
  }

  private static Map<String, Object> line(JsonNode entry, @Nullable JsonNode item) throws JsonProcessingException {
    Map<String, Object> line = new LinkedHashMap<>();
    for (String column : COLUMNS.subList(0, 7)) {
      put(line, column, entry.path(column));
    }
    JsonNode body = entry.path("body");
    if (item != null) {
      for (String column : List.of("food", "grams", "measure", "count", "supplements", "fish")) {
        put(line, column, item.path(column));
      }
    }
    put(line, "leftoverGrams", body.path("leftoverGrams"));
    put(line, "note", body.path("note"));
    line.put("body", guarded(body.toString()));
    return line;
  }

  private static void put(Map<String, Object> line, String column, JsonNode value) {
    if (value.isNumber()) {
      line.put(column, value.numberValue());
    } else if (value.isArray()) {
      List<String> texts = new ArrayList<>();
      value.forEach(one -> texts.add(one.asText()));
      line.put(column, guarded(String.join(" ", texts)));
    } else if (value.isValueNode()) {
      line.put(column, guarded(value.asText()));
    }
  }

  /** What a spreadsheet would take for a formula is marked as text. */
  static String guarded(String text) {
    return !text.isEmpty() && STARTS_A_FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }

  @Override
  public void close() throws IOException {
    lines.close();
  }
}
