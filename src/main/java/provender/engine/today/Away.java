package provender.engine.today;

import java.util.ArrayList;
import java.util.List;
import provender.engine.diet.FishDiet;
import provender.engine.feeder.AutoFeeder;
import provender.engine.fish.Band;
import provender.engine.food.Component;
import provender.engine.food.Food;
import provender.engine.quantity.Day;
import provender.engine.reference.Reference;

/**
 * How long nobody needs to come while the feeders run.
 *
 * @param hopperDays until the first running hopper may be empty; NaN where one of them was never filled
 * @param lacks what no feeder brings and somebody will miss, the soonest first
 */
public record Away(double hopperDays, List<Lack> lacks) {

  /** A part of a diet, the days until it is due again, and whose. */
  public record Lack(Component component, int days, List<String> fish) {}

  static Away of(List<FeederToday> feeders, List<FishToday> fish, Reference reference, Day today) {
    double soonest = Double.POSITIVE_INFINITY;
    boolean[] brought = new boolean[Component.values().length];
    for (FeederToday one : feeders) {
      AutoFeeder.Setting setting = one.setting();
      if (setting != null && setting.running()) {
        soonest = Math.min(soonest, one.days() == null ? Double.NaN : one.days().low());
        for (AutoFeeder.Part part : setting.mix()) {
          Food food = reference.food(part.food());
          for (Component component : food == null ? new Component[0] : food.brings()) {
            brought[component.ordinal()] = true;
          }
        }
      }
    }
    return new Away(Double.isInfinite(soonest) ? Double.NaN : soonest, lacks(fish, brought, today));
  }

  private static List<Lack> lacks(List<FishToday> fish, boolean[] brought, Day today) {
    List<Lack> lacks = new ArrayList<>();
    for (Component component : Component.values()) {
      List<String> whose = new ArrayList<>();
      int days = Integer.MAX_VALUE;
      for (FishToday one : fish) {
        Band band = one.fish().guild().band(component);
        if (band != null && band.minShare() > 0 && !brought[component.ordinal()]) {
          int last = one.diet().lastTaken(component);
          int since = last == FishDiet.NEVER ? band.gapDays() : today.epochDay() - last;
          days = Math.min(days, Math.max(0, band.gapDays() - since));
          whose.add(one.fish().key());
        }
      }
      if (!whose.isEmpty()) {
        lacks.add(new Lack(component, days, whose));
      }
    }
    lacks.sort((one, other) -> Integer.compare(one.days(), other.days()));
    return lacks;
  }
}
