package provender.engine.source;

import java.util.List;

/**
 * One step of a reckoning: what it found, by which formula, from which inputs, on whose word. The source is a key of the
 * source list, {@code practice}, or {@code entered} for what a keeper typed.
 */
public record Step(String what, String formula, double value, String unit, String source, List<Input> inputs) {
  public static final String ENTERED = "entered";
  public static final String PRACTICE = "practice";

  /** A number that went into a step. */
  public record Input(String name, double value, String unit) {}

  public static Step of(String what, String formula, double value, String unit, String source, Input... inputs) {
    return new Step(what, formula, value, unit, source, List.of(inputs));
  }

  public static Input input(String name, double value, String unit) {
    return new Input(name, value, unit);
  }
}
