package provender.engine.journal;

import java.util.List;
import provender.engine.fish.Fish;
import provender.engine.node.Node;

/**
 * A tank as its keepers set it up: volume in litres and temperature in °C are NaN where nobody said; the ration factor is 1. What a steward
 * wishes of the water, and how much of the ration is to come from feeders, is NaN too while nobody said.
 */
public record Tank(
    String name,
    double volumeLitres,
    double temperatureC,
    double rationFactor,
    double feederPart,
    double wantedNitrateMgL,
    double wantedPhosphateMgL,
    List<String> usualFoods,
    List<Fish> fish,
    List<Measure> measures,
    List<OwnFood> ownFoods,
    List<Recipe> recipes) {

  /** A measure people use at this tank and the grams of one food it holds. */
  public record Measure(String key, String name, String food, double grams, boolean weighed) {}

  /** A food of the tank's own, by the name its keepers gave it. */
  public record OwnFood(String key, String name, String category) {}

  /** Foods that are given together with one tap. */
  public record Recipe(String key, String name, List<Node> items) {}
}
