package provender.reference;

/**
 * One thing wrong with one table.
 *
 * @param line the line of the file, the header being 1; 0 when the whole file is meant
 * @param column the column's name in the header; empty when the whole line is meant
 */
public record Fault(String file, int line, String column, String says) {

  @Override
  public String toString() {
    return file + (line == 0 ? "" : ", line " + line) + (column.isEmpty() ? "" : ", column " + column) + ": " + says;
  }
}
