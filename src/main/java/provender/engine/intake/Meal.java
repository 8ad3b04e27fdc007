package provender.engine.intake;

import java.util.List;

/** What one feeding put in front of the fish: helpings, what was left of them in grams, and who turned away. */
public record Meal(List<Helping> helpings, double leftoverGrams, List<String> refusedBy) {

  /** The part of the common table's food that stayed uneaten, 0 to 1. */
  public double leftoverFraction() {
    double offered = 0;
    for (Helping helping : helpings) {
      if (helping.fish() == null) {
        offered += helping.grams();
      }
    }
    return offered > 0 ? Math.min(1, leftoverGrams / offered) : 0;
  }
}
