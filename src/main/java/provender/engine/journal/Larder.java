package provender.engine.journal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import provender.engine.journal.SharedRecords.Field;

/** What stands on the shelf beside a tank: its measures, its own foods, its recipes. What was put away is left out. */
final class Larder {
  private Larder() {}

  static List<Tank.Measure> measures(SharedRecords records) {
    List<Tank.Measure> measures = new ArrayList<>();
    for (String key : records.keys("measure")) {
      Map<String, Field> fields = records.fields("measure", key);
      if (isOnShelf(fields)) {
        measures.add(
            new Tank.Measure(
                key,
                SharedRecords.text(fields, "name", key),
                SharedRecords.text(fields, "food", ""),
                SharedRecords.number(fields, "grams", 0),
                SharedRecords.text(fields, "basis", "assumed").equals("weighed")));
      }
    }
    return measures;
  }

  static List<Tank.OwnFood> ownFoods(SharedRecords records) {
    List<Tank.OwnFood> foods = new ArrayList<>();
    for (String key : records.keys("food")) {
      Map<String, Field> fields = records.fields("food", key);
      if (isOnShelf(fields)) {
        foods.add(
            new Tank.OwnFood(
                key, SharedRecords.text(fields, "name", key), SharedRecords.text(fields, "category", "prepared")));
      }
    }
    return foods;
  }

  static List<Tank.Recipe> recipes(SharedRecords records) {
    List<Tank.Recipe> recipes = new ArrayList<>();
    for (String key : records.keys("recipe")) {
      Map<String, Field> fields = records.fields("recipe", key);
      if (isOnShelf(fields)) {
        recipes.add(
            new Tank.Recipe(key, SharedRecords.text(fields, "name", key), SharedRecords.nodes(fields.get("items"))));
      }
    }
    return recipes;
  }

  private static boolean isOnShelf(Map<String, Field> fields) {
    return !SharedRecords.text(fields, "status", "here").equals("gone");
  }
}
