package provender.engine.reference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import provender.engine.fish.Guild;
import provender.engine.fish.LengthWeight;
import provender.engine.fish.Species;
import provender.engine.food.Component;
import provender.engine.food.Food;
import provender.engine.node.Node;
import provender.engine.ration.PublishedModel;
import provender.engine.source.Constants;

/** Everything the published tables hold, by key. */
public final class Reference {
  private final Map<String, Food> foods;
  private final Map<String, Guild> guilds;
  private final Map<String, Species> species;
  private final Map<String, LengthWeight> families;
  private final Map<String, DietRule> rules;
  private final Map<String, PublishedModel> models;
  private final Constants constants;

  Reference(
      Map<String, Food> foods,
      Map<String, Guild> guilds,
      Map<String, Species> species,
      Map<String, LengthWeight> families,
      Map<String, DietRule> rules,
      Map<String, PublishedModel> models,
      Constants constants) {
    this.foods = foods;
    this.guilds = guilds;
    this.species = species;
    this.families = families;
    this.rules = rules;
    this.models = models;
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
    return new Reference(all, guilds, species, families, rules, models, constants);
  }

  public @Nullable Food food(String key) {
    return foods.get(key);
  }

  /** The keys of the foods that bring a component, the richest first. */
  public List<String> foodsWith(Component component) {
    List<Food> found = new ArrayList<>();
    for (Food food : foods.values()) {
      if (food.share(component) > 0) {
        found.add(food);
      }
    }
    found.sort((one, other) -> Double.compare(other.share(component), one.share(component)));
    List<String> keys = new ArrayList<>();
    for (Food food : found) {
      keys.add(food.key());
    }
    return keys;
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

  /** A published line of the ration by its key, or null. */
  public @Nullable PublishedModel model(String key) {
    return models.get(key);
  }

  public List<String> modelKeys() {
    return new ArrayList<>(models.keySet());
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
