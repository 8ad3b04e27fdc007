package provender.browser;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.teavm.jso.JSBody;
import org.teavm.jso.JSObject;
import org.teavm.jso.core.JSArray;
import org.teavm.jso.core.JSBoolean;
import org.teavm.jso.core.JSNumber;
import org.teavm.jso.core.JSString;

/** An answer's tree of maps and lists as plain JavaScript objects and arrays. */
final class JsTree {
  private JsTree() {}

  static JSObject of(@Nullable Object value) {
    if (value instanceof Double number) {
      return JSNumber.valueOf(number);
    }
    if (value instanceof String text) {
      return JSString.valueOf(text);
    }
    if (value instanceof Boolean truth) {
      return JSBoolean.valueOf(truth);
    }
    if (value instanceof Map<?, ?> map) {
      JSObject object = empty();
      for (Map.Entry<?, ?> field : map.entrySet()) {
        if (field.getKey() instanceof String name) {
          set(object, name, of(field.getValue()));
        }
      }
      return object;
    }
    if (value instanceof JsNode node) {
      return node.object();
    }
    JSArray<JSObject> array = new JSArray<>();
    if (value instanceof List<?> list) {
      for (Object item : list) {
        array.push(of(item));
      }
    }
    return array;
  }

  @JSBody(script = "return {};")
  private static native JSObject empty();

  @JSBody(
      params = {"o", "name", "value"},
      script = "o[name] = value;")
  private static native void set(JSObject object, String name, JSObject value);
}
