package provender.engine.journal;

/**
 * Two people changed one field that can harm, and the second had not seen the first. What stood still stands.
 *
 * @param seen the place a decision must have seen to count
 */
public record Conflict(String record, String key, String field, Side standing, Side other, double seen) {

  /** One of the two: the entry, who wrote it, and the value, as it was written. */
  public record Side(String entry, String by, Object value) {}
}
