package provender.engine.intake;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What people saw fish take and refuse, as a factor on each fish's liking of a food: (prior + taken) / (prior + taken +
 * refused). The prior stands for what its guild is known to do.
 */
public final class Sightings {
  private static final String ANY = "";

  private final double prior;
  /** By fish, then food: how often it took it, how often it refused. */
  private final Map<String, Map<String, int[]>> counts = new HashMap<>();

  public Sightings(List<Sighting> seen, double prior) {
    this.prior = prior;
    for (Sighting one : seen) {
      Map<String, int[]> its = counts.computeIfAbsent(one.fish(), fish -> new HashMap<>());
      its.computeIfAbsent(one.food(), food -> new int[2])[one.ate() ? 0 : 1]++;
    }
  }

  /** What was seen of this food and of food as such, together. */
  public double liking(String fish, String food) {
    Map<String, int[]> seen = counts.get(fish);
    if (seen == null) {
      return 1;
    }
    int[] its = seen.getOrDefault(food, new int[2]);
    int[] any = seen.getOrDefault(ANY, new int[2]);
    double taken = prior + its[0] + any[0];
    return taken / (taken + its[1] + any[1]);
  }
}
