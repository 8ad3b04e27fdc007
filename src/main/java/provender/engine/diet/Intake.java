package provender.engine.diet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import provender.engine.food.Component;
import provender.engine.quantity.Day;

/** What one fish, or one tank, is known to have eaten over a window of days, in dry matter. */
public final class Intake {
  private final Day last;
  private final int days;
  private final double[] dryByComponent = new double[Component.values().length];
  private final int[] lastDay = new int[Component.values().length];
  private final Map<String, Double> supplementDays = new LinkedHashMap<>();
  private double dry;

  public Intake(Day last, int days) {
    this.last = last;
    this.days = days;
    for (int i = 0; i < lastDay.length; i++) {
      lastDay[i] = FishDiet.NEVER;
    }
  }

  /** @param shares one per {@link Component}; what lies outside the window is passed over */
  public void ate(Day day, double dryGrams, double[] shares, List<String> supplements) {
    int ago = last.since(day);
    if (ago < 0 || ago >= days || dryGrams <= 0) {
      return;
    }
    dry += dryGrams;
    for (int i = 0; i < shares.length; i++) {
      dryByComponent[i] += dryGrams * shares[i];
      if (shares[i] > 0) {
        lastDay[i] = Math.max(lastDay[i], day.epochDay());
      }
    }
    for (String supplement : supplements) {
      Double before = supplementDays.get(supplement);
      supplementDays.put(supplement, before == null ? 1.0 : before + 1);
    }
  }

  public double dryGrams() {
    return dry;
  }

  /** Part of the dry matter, NaN when nothing was eaten. */
  public double share(Component component) {
    return dry > 0 ? dryByComponent[component.ordinal()] / dry : Double.NaN;
  }

  /** Days since it was eaten, NaN when it never was within the window. */
  public double daysSince(Component component) {
    int day = lastDay[component.ordinal()];
    return day == FishDiet.NEVER ? Double.NaN : last.epochDay() - day;
  }

  /** How often each supplement came with a helping. */
  public Map<String, Double> supplements() {
    return supplementDays;
  }
}
