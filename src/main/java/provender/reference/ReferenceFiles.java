package provender.reference;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The published tables, read strictly: name of the table to its rows, each a map from the header's column names to
 * Double or String, empty cells left out.
 */
public final class ReferenceFiles {
  private final Shelf shelf;

  private ReferenceFiles(Shelf shelf) {
    this.shelf = shelf;
  }

  public static ReferenceFiles in(Path folder) {
    return new ReferenceFiles(file -> {
      var path = folder.resolve(file);
      return Files.exists(path) ? Files.newInputStream(path) : null;
    });
  }

  /** The tables that were packed with the program. */
  public static ReferenceFiles onClasspath() {
    return new ReferenceFiles(file -> ReferenceFiles.class.getResourceAsStream("/shared/reference/" + file));
  }

  /**
   * Every table.
   *
   * @throws ReferenceRefused when anything is wrong, naming every fault at once
   */
  public Map<String, List<Map<String, Object>>> read() {
    var faults = new Faults();
    var rows = new LinkedHashMap<Table, List<Row>>();
    for (var table : Tables.ALL) rows.put(table, rowsOf(table, faults));
    new References(rows, faults).check();
    new TableRules(rows, faults).check();
    faults.refuseIfAny();
    return named(rows);
  }

  private List<Row> rowsOf(Table table, Faults faults) {
    var rows = new ArrayList<Row>();
    try (var in = shelf.open(table.file())) {
      if (in == null) {
        faults.add(table, 0, "", "is missing");
        return rows;
      }
      var lines = CsvLines.read(table, in, faults);
      if (!headerIsWhole(table, lines.header(), faults)) return rows;
      lines.cellsByLine().forEach((line, cells) -> rows.add(new Cells(table, line, cells, faults).read()));
      if (rows.isEmpty()) faults.add(table, 0, "", "holds no rows");
    } catch (IOException e) {
      faults.add(table, 0, "", "cannot be read: " + e.getMessage());
    }
    return rows;
  }

  private static boolean headerIsWhole(Table table, List<String> header, Faults faults) {
    var declared = table.columns().stream().map(Column::name).collect(Collectors.toSet());
    Set<String> given = new HashSet<>();
    boolean whole = true;
    for (var column : header) {
      if (!given.add(column)) whole = fault(table, column, "stands twice in the header", faults);
      if (!declared.contains(column)) whole = fault(table, column, "is not a column of this table", faults);
    }
    for (var column : declared)
      if (!given.contains(column)) whole = fault(table, column, "is missing from the header", faults);
    return whole;
  }

  private static boolean fault(Table table, String column, String says, Faults faults) {
    faults.add(table, 1, column, says);
    return false;
  }

  private static Map<String, List<Map<String, Object>>> named(Map<Table, List<Row>> rows) {
    var named = new LinkedHashMap<String, List<Map<String, Object>>>();
    rows.forEach((table, read) -> named.put(table.name(), read.stream().map(Row::values).toList()));
    return named;
  }

  /** Where the files stand. */
  private interface Shelf {
    @Nullable InputStream open(String file) throws IOException;
  }
}
