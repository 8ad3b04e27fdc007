package provender.engine.fish;

import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.engine.food.Component;
import provender.engine.food.Food;

/** A feeding guild: fish of one way of eating, with what they need and how hard they work for it. */
public record Guild(
    String key, double rationFactor, String rationSource, double mealsPerDay, String warningLevel, List<Band> bands) {

  public @Nullable Band band(Component component) {
    for (Band band : bands) {
      if (band.component() == component) {
        return band;
      }
    }
    return null;
  }

  /**
   * How readily this guild takes a food, against the food it likes best: the food's components weighted by the guild's
   * wanted shares, 1 for a food wholly of its first choice, never below {@code floor}.
   */
  public double preference(Food food, double floor) {
    double best = 0;
    double sum = 0;
    for (Band band : bands) {
      if (band.component().isShare() && band.hasTarget()) {
        best = Math.max(best, band.targetShare());
        sum += band.targetShare() * food.share(band.component());
      }
    }
    return best > 0 ? Math.max(floor, sum / best) : 1;
  }
}
