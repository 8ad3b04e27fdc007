package provender.browser;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.teavm.jso.JSBody;
import org.teavm.jso.JSObject;
import org.teavm.jso.core.JSArray;
import org.teavm.jso.core.JSBoolean;
import org.teavm.jso.core.JSNumber;
import org.teavm.jso.core.JSString;
import provender.engine.node.Node;

/** A JavaScript object read in place, without turning it into text or copying it. */
final class JsNode implements Node {
  private final JSObject object;

  JsNode(JSObject object) {
    this.object = object;
  }

  /** What it was read from, as it is. */
  JSObject object() {
    return object;
  }

  @Override
  public @Nullable Object at(String name) {
    return seen(get(object, name));
  }

  @Override
  public List<String> names() {
    List<String> names = new ArrayList<>();
    for (String name : keys(object)) {
      names.add(name);
    }
    return names;
  }

  private static @Nullable Object seen(JSObject value) {
    return switch (kind(value)) {
      case 1 -> ((JSNumber) value).doubleValue();
      case 2 -> ((JSString) value).stringValue();
      case 3 -> ((JSBoolean) value).booleanValue();
      case 4 -> list((JSArray<JSObject>) value);
      case 5 -> new JsNode(value);
      default -> null;
    };
  }

  private static List<@Nullable Object> list(JSArray<JSObject> array) {
    List<@Nullable Object> items = new ArrayList<>(array.getLength());
    for (int i = 0; i < array.getLength(); i++) {
      items.add(seen(array.get(i)));
    }
    return items;
  }

  @JSBody(
      params = "o",
      script =
          "var t = typeof o; return t === 'number' ? 1 : t === 'string' ? 2 : t === 'boolean' ? 3"
              + " : Array.isArray(o) ? 4 : t === 'object' && o !== null ? 5 : 0;")
  private static native int kind(JSObject value);

  @JSBody(
      params = {"o", "name"},
      script = "return Object.prototype.hasOwnProperty.call(o, name) ? o[name] : null;")
  private static native JSObject get(JSObject object, String name);

  @JSBody(params = "o", script = "return Object.keys(o);")
  private static native String[] keys(JSObject object);
}
