package provender.contract;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import provender.engine.node.Node;
import provender.engine.node.Patched;
import provender.engine.reference.Reference;

/** What would change an answer most: the calculation done again with each number a tenth larger. */
final class Sensitivity {
  private static final double A_TENTH_MORE = 1.1;

  /** Where each calculation keeps the figure that it is asked for. */
  private static final Map<String, String[]> FIGURES =
      Map.of(
          "weight", new String[] {"weightGrams", "value"},
          "growth", new String[] {"weightGrams"},
          "food-energy", new String[] {"digestibleKjPerGram", "asFed"},
          "ration", new String[] {"energyKj", "value"},
          "drops", new String[] {"gramsPerDrop", "value"});

  private Sensitivity() {}

  static boolean isKnownFor(String name) {
    return FIGURES.containsKey(name);
  }

  /** Relative change of the figure for each number of the request, the largest first. */
  static List<Object> of(String name, Node input, Map<String, Object> answer, Reference reference) {
    double figure = figure(name, answer);
    List<Change> changes = new ArrayList<>();
    for (String field : input.names()) {
      Object value = input.at(field);
      if (value instanceof Double number && number != 0) {
        Node other = new Patched(input, Map.of(field, number * A_TENTH_MORE));
        add(changes, field, figure, figure(name, Calculation.answer(name, other, reference)));
      } else if (value instanceof List<?> list && !list.isEmpty() && list.get(0) instanceof Node first) {
        for (String inner : first.names()) {
          Node other = new Patched(input, Map.of(field, larger(list, inner)));
          add(changes, field + "." + inner, figure, figure(name, Calculation.answer(name, other, reference)));
        }
      }
    }
    changes.sort((one, two) -> Double.compare(Math.abs(two.relative()), Math.abs(one.relative())));
    List<Object> shapes = new ArrayList<>();
    for (Change change : changes) {
      shapes.add(Shapes.object("input", change.input(), "ifATenthMore", change.relative()));
    }
    return shapes;
  }

  private record Change(String input, double relative) {}

  private static void add(List<Change> changes, String input, double before, double after) {
    if (!Double.isNaN(after) && after != before) {
      changes.add(new Change(input, after / before - 1));
    }
  }

  private static List<Object> larger(List<?> list, String field) {
    List<Object> larger = new ArrayList<>();
    for (Object item : list) {
      Map<String, Object> over = new HashMap<>();
      if (item instanceof Node node && node.at(field) instanceof Double number) {
        over.put(field, number * A_TENTH_MORE);
      }
      larger.add(item instanceof Node node ? new Patched(node, over) : item);
    }
    return larger;
  }

  /** The figure of an answer, NaN when the changed request was refused. */
  private static double figure(String name, Map<String, Object> answer) {
    Object found = answer;
    String[] path = FIGURES.get(name);
    if (path != null) {
      for (String step : path) {
        found = found instanceof Map<?, ?> map ? map.get(step) : null;
      }
    }
    return found instanceof Double number ? number : Double.NaN;
  }
}
