package provender.engine.source;

import java.util.Map;
import provender.engine.quantity.Range;

/** The constants table, complete: one value with its range and source for each {@link Constant}. */
public final class Constants {

  /** One row of the table. */
  public record Row(Range range, String unit, String source) {}

  /** By the constant's place in the enum. */
  private final Row[] rows = new Row[Constant.values().length];

  public Constants(Map<String, Row> table) {
    for (Constant constant : Constant.values()) {
      Row row = table.get(constant.key());
      if (row == null) {
        throw new IllegalArgumentException("the constants table lacks " + constant.key());
      }
      rows[constant.ordinal()] = row;
    }
  }

  public double value(Constant constant) {
    return row(constant).range().value();
  }

  public Range range(Constant constant) {
    return row(constant).range();
  }

  public String source(Constant constant) {
    return row(constant).source();
  }

  /** The constant as it stands in a list of reasons. */
  public Step.Input input(Constant constant) {
    return Step.input(constant.key(), value(constant), row(constant).unit());
  }

  private Row row(Constant constant) {
    return rows[constant.ordinal()];
  }
}
