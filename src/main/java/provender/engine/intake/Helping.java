package provender.engine.intake;

import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.engine.fish.Fish;
import provender.engine.food.Food;

/**
 * One food given at a feeding, in grams as offered.
 *
 * @param food null for a key the tables lack; it is kept and shown, but cannot be reckoned with
 * @param fish the fish it was handed to, or null when it went to the whole table
 */
public record Helping(
    String foodKey,
    @Nullable Food food,
    double grams,
    String measure,
    double count,
    List<String> supplements,
    @Nullable String fish) {

  /** Whether it is handed to a fish that is kept apart from the display. */
  public boolean goesToIsolation(List<Fish> roster) {
    for (Fish one : roster) {
      if (one.inIsolation() && one.key().equals(fish)) {
        return true;
      }
    }
    return false;
  }
}
