package provender.engine.intake;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What people saw fish take and refuse. Of a food, it is a factor on each fish's liking of it: (prior + taken) / (prior + taken +
 * refused), where the prior stands for what its guild is known to do. Of food as such, it holds for its day alone.
 */
public final class Sightings {
  private static final String ANY = "";
  private static final int ATE = 1;
  private static final int TURNED = 2;
  private static final int TURNED_FROM_ALL = 4;

  private final double prior;
  /** By fish, then food: how often it took it, how often it refused. */
  private final Map<String, Map<String, int[]>> counts = new HashMap<>();
  /** By fish and day: what of it was seen that day. */
  private final Map<String, Integer> days = new HashMap<>();

  public Sightings(List<Sighting> seen, double prior) {
    this.prior = prior;
    for (Sighting one : seen) {
      boolean any = one.food().equals(ANY);
      String day = one.epochDay() + one.fish();
      days.put(day, seen(day) | (one.ate() ? ATE : any ? TURNED | TURNED_FROM_ALL : TURNED));
      if (!any) {
        counts.computeIfAbsent(one.fish(), fish -> new HashMap<>()).computeIfAbsent(one.food(), food -> new int[2])[one.ate() ? 0 : 1]++;
      }
    }
  }

  /** What was seen of this food. */
  public double liking(String fish, String food) {
    Map<String, int[]> seen = counts.get(fish);
    int[] its = seen == null ? null : seen.get(food);
    return its == null ? 1 : (prior + its[0]) / (prior + its[0] + its[1]);
  }

  public boolean ate(String fish, int epochDay) {
    return (seen(epochDay + fish) & ATE) != 0;
  }

  /** From some food at least. */
  public boolean turned(String fish, int epochDay) {
    return (seen(epochDay + fish) & TURNED) != 0;
  }

  /** From whatever was offered, and nobody saw it eat that day. */
  public boolean turnedFromAll(String fish, int epochDay) {
    return (seen(epochDay + fish) & (ATE | TURNED_FROM_ALL)) == TURNED_FROM_ALL;
  }

  private int seen(String day) {
    Integer known = days.get(day);
    return known == null ? 0 : known;
  }
}
