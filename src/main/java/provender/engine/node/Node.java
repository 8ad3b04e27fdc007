package provender.engine.node;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One JSON object, read by name. Values are Double, String, Boolean, Node, a List of these, or null for what is absent. */
public interface Node {

  @Nullable Object at(String name);

  List<String> names();

  default double number(String name, double otherwise) {
    return at(name) instanceof Double number ? number : otherwise;
  }

  default String text(String name, String otherwise) {
    return at(name) instanceof String text ? text : otherwise;
  }

  default @Nullable Node node(String name) {
    return at(name) instanceof Node node ? node : null;
  }

  /** The objects of a list; whatever else stands in it is passed over. */
  default List<Node> nodes(String name) {
    List<Node> found = new ArrayList<>();
    if (at(name) instanceof List<?> list) {
      for (Object item : list) {
        if (item instanceof Node node) {
          found.add(node);
        }
      }
    }
    return found;
  }

  /** The numbers of a list; whatever else stands in it is passed over. */
  default List<Double> numbers(String name) {
    List<Double> found = new ArrayList<>();
    if (at(name) instanceof List<?> list) {
      for (Object item : list) {
        if (item instanceof Double number) {
          found.add(number);
        }
      }
    }
    return found;
  }

  /** The texts of a list; whatever else stands in it is passed over. */
  default List<String> texts(String name) {
    List<String> found = new ArrayList<>();
    if (at(name) instanceof List<?> list) {
      for (Object item : list) {
        if (item instanceof String text) {
          found.add(text);
        }
      }
    }
    return found;
  }
}
