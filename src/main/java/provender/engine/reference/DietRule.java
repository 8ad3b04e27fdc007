package provender.engine.reference;

import java.util.List;

/**
 * One row of the deficiency table: which guilds a rule speaks for, how heavy it weighs, how sure it is and on whose word,
 * and which foods mend it.
 *
 * @param limit the share, count or part that must not be passed; NaN for a rule without one
 * @param windowDays how far it looks back; 0 for a rule without a window of its own
 */
public record DietRule(
    String key, List<String> guilds, String severity, String sure, List<String> sources, List<String> offerFoods,
    double limit, int windowDays) {

  public boolean speaksFor(String guild) {
    return guilds.contains(guild) || guilds.contains("all");
  }
}
