package provender.browser;

import java.util.ArrayList;
import java.util.List;
import org.teavm.jso.JSExport;
import org.teavm.jso.JSObject;
import org.teavm.jso.core.JSArray;
import provender.contract.TankBook;
import provender.engine.node.Node;
import provender.engine.reference.Reference;

/** One tank's journal on the phone. */
public final class Book {
  private final TankBook book;

  Book(Reference reference) {
    this.book = new TankBook(reference);
  }

  /** Takes entries in any order; the same ones again do no harm. */
  @JSExport
  public void take(JSArray<JSObject> entries) {
    List<Node> nodes = new ArrayList<>(entries.getLength());
    for (int i = 0; i < entries.getLength(); i++) {
      nodes.add(new JsNode(entries.get(i)));
    }
    book.take(nodes);
  }

  /** Who is reckoned to have got how much of one feeding of the last days. */
  @JSExport
  public JSObject shares(String now, String feeding) {
    return JsTree.of(book.shares(now, feeding));
  }

  /** What feeding does to the water at such a time. */
  @JSExport
  public JSObject water(String now) {
    return JsTree.of(book.water(now));
  }

  /** How things stand at a local time such as {@code 2026-11-25T08:10:00+01:00}. */
  @JSExport
  public JSObject today(String now) {
    return JsTree.of(book.today(now));
  }

  /** An entry and every later one that changed it, took it back or brought it back, as they were given. */
  @JSExport
  public JSObject history(String entry) {
    return JsTree.of(book.history(entry));
  }
}
