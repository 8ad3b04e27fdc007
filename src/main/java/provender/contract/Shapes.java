package provender.contract;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import provender.engine.quantity.Range;
import provender.engine.source.Figure;
import provender.engine.source.Step;

/** The pieces of JSON that every answer is made of. */
final class Shapes {
  private Shapes() {}

  /** An object from name, value, name, value; a value that is not there is left out. */
  static Map<String, Object> object(@Nullable Object... namesAndValues) {
    Map<String, Object> object = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      Object value = namesAndValues[i + 1];
      if (namesAndValues[i] instanceof String name && value != null && !isNotANumber(value)) {
        object.put(name, value);
      }
    }
    return object;
  }

  static Map<String, Object> range(Range range) {
    return object("low", range.low(), "value", range.value(), "high", range.high());
  }

  static Map<String, Object> figure(Figure figure) {
    Map<String, Object> object = range(figure.range());
    object.put("basis", figure.basis().key());
    object.put("why", steps(figure.why()));
    return object;
  }

  static List<Object> steps(List<Step> why) {
    List<Object> steps = new ArrayList<>();
    for (Step step : why) {
      steps.add(
          object(
              "what", step.what(),
              "formula", step.formula(),
              "value", step.value(),
              "unit", step.unit(),
              "source", step.source(),
              "inputs", inputs(step.inputs())));
    }
    return steps;
  }

  static Map<String, Object> numbers(List<Step.Input> inputs) {
    Map<String, Object> numbers = new LinkedHashMap<>();
    for (Step.Input input : inputs) {
      numbers.put(input.name(), input.value());
    }
    return numbers;
  }

  static List<Object> inputs(List<Step.Input> inputs) {
    List<Object> list = new ArrayList<>();
    for (Step.Input input : inputs) {
      list.add(object("name", input.name(), "value", input.value(), "unit", input.unit()));
    }
    return list;
  }

  private static boolean isNotANumber(Object value) {
    return value instanceof Double number && Double.isNaN(number);
  }
}
