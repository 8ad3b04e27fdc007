package provender.browser;

import org.teavm.jso.JSBody;
import org.teavm.jso.JSExport;
import org.teavm.jso.JSObject;
import java.util.*;

public final class Face {
  private Face() {}
  @JSExport public static double half(double x) { return x / 2; }
  @JSExport public static Book open(JSObject ref) { return new Book(names(ref)); }
  static List<String> names(JSObject o) { List<String> l = new ArrayList<>(); for (String s : keys(o)) l.add(s); return l; }
  @JSBody(params = "o", script = "return Object.keys(o);") private static native String[] keys(JSObject o);

  public static final class Book {
    private final List<String> names; 
    Book(List<String> names) { this.names = names; }
    @JSExport public double count() { return names.size(); }
  }
}
