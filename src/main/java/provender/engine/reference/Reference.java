package provender.engine.reference;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import provender.engine.fish.Guild;
import provender.engine.fish.LengthWeight;
import provender.engine.fish.Species;
import provender.engine.food.Food;
import provender.engine.node.Node;
import provender.engine.source.Constants;

/** Everything the published tables hold, by key. */
public final class Reference {
  private final Map<String, Food> foods;
  private final Map<String, Guild> guilds;
  private final Map<String, Species> species;
  private final Map<String, LengthWeight> families;
  private final Map<String, DietRule> rules;
  private final Constants constants;

  Reference(
      Map<String, Food> foods,
      Map<String, Guild> guilds,
      Map<String, Species> species,
      Map<String, LengthWeight> families,
      Map<String, DietRule> rules,
      Constants constants) {
    this.foods = foods;
    this.guilds = guilds;
    this.species = species;
    this.families = families;
    this.rules = rules;
    this.constants = constants;
  }

  /** Reads the tables as they stand in {@code shared/reference.json}. */
  public static Reference of(Node tables) {
    return new Tables(tables).reference();
  }

  /** These tables with a tank's own foods beside the published ones; a published key stays what it is. */
  public Reference with(Map<String, Food> own) {
    if (own.isEmpty()) {
      return this;
    }
    Map<String, Food> all = new LinkedHashMap<>(own);
    all.putAll(foods);
    return new Reference(all, guilds, species, families, rules, constants);
  }

  public @Nullable Food food(String key) {
    return foods.get(key);
  }

  public @Nullable Guild guild(String key) {
    return guilds.get(key);
  }

  public @Nullable Species species(String scientificName) {
    return species.get(scientificName);
  }

  /** The middle of a family's relations, for a species the tables lack; null for a family they lack too. */
  public @Nullable LengthWeight family(String name) {
    return families.get(name);
  }

  public DietRule rule(String key) {
    DietRule rule = rules.get(key);
    if (rule == null) {
      throw new IllegalArgumentException("the deficiency table lacks " + key);
    }
    return rule;
  }

  public Constants constants() {
    return constants;
  }
}
