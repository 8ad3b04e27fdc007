package provender.engine.node;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A JSON object held as a map, the way JSON libraries on the server give it. */
public final class MapNode implements Node {
  private final Map<String, ?> map;

  public MapNode(Map<String, ?> map) {
    this.map = map;
  }

  @Override
  public @Nullable Object at(String name) {
    return seen(map.get(name));
  }

  @Override
  public List<String> names() {
    return new ArrayList<>(map.keySet());
  }

  private static @Nullable Object seen(@Nullable Object value) {
    if (value instanceof Number number) {
      return number.doubleValue();
    }
    if (value instanceof Map<?, ?> inner) {
      @SuppressWarnings("unchecked")
      Map<String, ?> named = (Map<String, ?>) inner;
      return new MapNode(named);
    }
    if (value instanceof List<?> list) {
      List<@Nullable Object> items = new ArrayList<>(list.size());
      for (Object item : list) {
        items.add(seen(item));
      }
      return items;
    }
    return value;
  }
}
