package provender.engine;

import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Finds its way in an answer: names go into objects, numbers into lists. */
public final class Told {
  private Told() {}

  public static double number(Object answer, Object... path) {
    return (Double) at(answer, path);
  }

  @SuppressWarnings("unchecked")
  public static List<Map<String, Object>> list(Object answer, Object... path) {
    return (List<Map<String, Object>>) at(answer, path);
  }

  public static Object at(Object answer, Object... path) {
    Object found = answer;
    for (Object step : path) {
      Object inside = step instanceof Integer place ? ((List<?>) found).get(place) : ((Map<?, ?>) found).get(step);
      found = Objects.requireNonNull(inside, () -> "nothing at " + step);
    }
    return found;
  }

  /** The one in a list whose field has that value. */
  public static Map<String, Object> one(List<Map<String, Object>> list, String field, Object value) {
    return list.stream().filter(item -> value.equals(item.get(field))).findFirst().orElseThrow();
  }
}
