package provender.engine.fish;

import provender.engine.food.Component;

/**
 * What a guild needs of one component: its least, wanted and greatest share of the dry matter (NaN where the table names
 * none), and the longest time between two helpings.
 */
public record Band(
    Component component, double minShare, double targetShare, double maxShare, int gapDays, String source) {

  public boolean hasTarget() {
    return targetShare > 0;
  }
}
