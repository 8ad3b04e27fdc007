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
  private final Map<String, int[]> counts = new HashMap<>();

  public Sightings(List<Sighting> seen, double prior) {
    this.prior = prior;
    for (Sighting one : seen) {
      counts.computeIfAbsent(key(one.fish(), one.food()), name -> new int[2])[one.ate() ? 0 : 1]++;
    }
  }

  /** What was seen of this food and of food as such, together. */
  public double liking(String fish, String food) {
    int[] its = counts.getOrDefault(key(fish, food), new int[2]);
    int[] any = counts.getOrDefault(key(fish, ANY), new int[2]);
    double taken = prior + its[0] + any[0];
    return taken / (taken + its[1] + any[1]);
  }

  private static String key(String fish, String food) {
    return fish + "\n" + food;
  }
}
