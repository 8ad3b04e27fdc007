package provender.engine.journal;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import provender.engine.food.Component;
import provender.engine.food.Composition;
import provender.engine.food.Food;
import provender.engine.journal.SharedRecords.Field;
import provender.engine.node.Node;
import provender.engine.source.Constants;
import provender.engine.source.Step;

/** Reads the foods that keepers wrote down from a label, in grams per 100 g as fed. */
final class OwnFoods {
  private static final double FULLEST_LABEL = 103;

  private OwnFoods() {}

  /** By key; a label that cannot be one (negative, no room for what it says) gives no food. */
  static Map<String, Food> read(SharedRecords records, Constants constants) {
    Map<String, Food> foods = new LinkedHashMap<>();
    for (String key : records.keys("food")) {
      Map<String, Field> fields = records.fields("food", key);
      Composition label = label(fields);
      if (label != null) {
        foods.put(key, food(key, fields, label, constants));
      }
    }
    return foods;
  }

  private static Food food(String key, Map<String, Field> fields, Composition label, Constants constants) {
    double[] shares = new double[Component.values().length];
    Field parts = fields.get("components");
    if (parts != null && parts.value() instanceof Node given) {
      for (Component component : Component.values()) {
        shares[component.ordinal()] = Math.max(0, Math.min(1, given.number(component.key(), 0)));
      }
    }
    return new Food(
        key,
        SharedRecords.text(fields, "category", "prepared"),
        label,
        1,
        shares,
        SharedRecords.texts(fields.get("flags")),
        Step.ENTERED,
        constants);
  }

  private static @Nullable Composition label(Map<String, Field> fields) {
    double water = SharedRecords.number(fields, "waterGrams", Double.NaN);
    double protein = SharedRecords.number(fields, "proteinGrams", Double.NaN);
    double fat = SharedRecords.number(fields, "fatGrams", Double.NaN);
    double fibre = SharedRecords.number(fields, "fibreGrams", 0);
    double ash = SharedRecords.number(fields, "ashGrams", 0);
    boolean possible = water >= 0 && water < 100 && protein >= 0 && fat >= 0 && fibre >= 0 && ash >= 0;
    if (!possible || water + protein + fat + ash > FULLEST_LABEL) {
      return null;
    }
    double phosphorus = SharedRecords.number(fields, "phosphorusMg", Double.NaN);
    double carbohydrate = Composition.byDifference(water, protein, fat, fibre, ash).carbohydrateGrams();
    return new Composition(water, protein, fat, carbohydrate, fibre, ash, phosphorus >= 0 ? phosphorus : Double.NaN);
  }
}
