package provender.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import provender.engine.food.Food;
import provender.engine.journal.Tank;
import provender.engine.node.Node;
import provender.engine.reference.Reference;

/** A tank's measures, own foods and recipes as JSON. */
final class LarderShape {
  private LarderShape() {}

  static List<Object> measures(Tank tank) {
    List<Object> list = new ArrayList<>();
    for (Tank.Measure measure : tank.measures()) {
      list.add(
          Shapes.object(
              "key", measure.key(),
              "name", measure.name(),
              "food", measure.food(),
              "grams", measure.grams(),
              "basis", measure.weighed() ? "weighed" : "assumed"));
    }
    return list;
  }

  static List<Object> ownFoods(Tank tank, Reference reference) {
    List<Object> list = new ArrayList<>();
    for (Tank.OwnFood own : tank.ownFoods()) {
      Food food = reference.food(own.key());
      Map<String, Object> shape = Shapes.object("key", own.key(), "name", own.name(), "category", own.category());
      if (food != null) {
        shape.put("kjPerGram", Shapes.figure(food.energy()));
      }
      list.add(shape);
    }
    return list;
  }

  static List<Object> recipes(Tank tank) {
    List<Object> list = new ArrayList<>();
    for (Tank.Recipe recipe : tank.recipes()) {
      List<Object> items = new ArrayList<>();
      for (Node item : recipe.items()) {
        items.add(
            Shapes.object(
                "food", item.text("food", ""),
                "grams", item.number("grams", 0),
                "supplements", item.texts("supplements")));
      }
      list.add(Shapes.object("key", recipe.key(), "name", recipe.name(), "items", items));
    }
    return list;
  }
}
