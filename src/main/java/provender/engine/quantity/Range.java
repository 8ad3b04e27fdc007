package provender.engine.quantity;

/** A number with the lowest and highest value it may honestly have. */
public record Range(double low, double value, double high) {
  public static final Range ZERO = exactly(0);

  public Range {
    if (!(low <= value && value <= high)) {
      throw new IllegalArgumentException("a range must hold its value");
    }
  }

  public static Range exactly(double value) {
    return new Range(value, value, value);
  }

  /** Puts low and high round a value, widened to hold it where rounding let it slip out. */
  public static Range around(double low, double value, double high) {
    return new Range(Math.min(low, value), value, Math.max(high, value));
  }

  public Range times(double factor) {
    return factor >= 0
        ? new Range(low * factor, value * factor, high * factor)
        : new Range(high * factor, value * factor, low * factor);
  }

  public Range plus(Range other) {
    return new Range(low + other.low, value + other.value, high + other.high);
  }

  /** The other way round: how much is left of this after {@code other}, at worst and at best. */
  public Range minus(Range other) {
    return new Range(low - other.high, value - other.value, high - other.low);
  }

  public Range atLeastZero() {
    return new Range(Math.max(0, low), Math.max(0, value), Math.max(0, high));
  }

  /**
   * This times {@code other} when the two errors have nothing to do with each other: the distances from the middle, taken
   * as ratios, add up as squares.
   */
  public Range timesUnrelated(Range other) {
    double middle = value * other.value;
    if (!(low > 0 && other.low > 0)) {
      return around(low * other.low, middle, high * other.high);
    }
    double down = Math.hypot(Math.log(value / low), Math.log(other.value / other.low));
    double up = Math.hypot(Math.log(high / value), Math.log(other.high / other.value));
    return around(middle * Math.exp(-down), middle, middle * Math.exp(up));
  }

  /** This plus {@code other} when the two errors have nothing to do with each other: distances add up as squares. */
  public Range plusUnrelated(Range other) {
    double middle = value + other.value;
    double down = Math.hypot(value - low, other.value - other.low);
    double up = Math.hypot(high - value, other.high - other.value);
    return around(middle - down, middle, middle + up);
  }
}
