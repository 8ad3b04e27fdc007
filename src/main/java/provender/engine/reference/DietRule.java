package provender.engine.reference;

import java.util.List;

/**
 * One row of the deficiency table: which guilds a rule speaks for, how heavy it weighs, how sure it is and on whose word,
 * and which foods mend it.
 */
public record DietRule(
    String key, List<String> guilds, String severity, String sure, List<String> sources, List<String> offerFoods) {

  public boolean speaksFor(String guild) {
    return guilds.contains(guild);
  }
}
