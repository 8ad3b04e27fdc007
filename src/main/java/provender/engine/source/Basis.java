package provender.engine.source;

/** How a figure was come by; the three look different on every screen. */
public enum Basis {
  MEASURED("measured"),
  ESTIMATED("estimated"),
  ASSUMED("assumed");

  private final String key;

  Basis(String key) {
    this.key = key;
  }

  public String key() {
    return key;
  }
}
