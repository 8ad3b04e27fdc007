package provender.engine.node;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** An object with some of its fields written over by later hands; the object underneath stays as it was. */
public final class Patched implements Node {
  private final Node under;
  private final Map<String, Object> over;

  public Patched(Node under, Map<String, Object> over) {
    this.under = under;
    this.over = over;
  }

  @Override
  public @Nullable Object at(String name) {
    return over.containsKey(name) ? over.get(name) : under.at(name);
  }

  @Override
  public List<String> names() {
    List<String> names = new ArrayList<>(under.names());
    for (String name : over.keySet()) {
      if (!names.contains(name)) {
        names.add(name);
      }
    }
    return names;
  }
}
