package provender.browser;

import org.teavm.jso.JSExport;
import org.teavm.jso.JSObject;
import provender.contract.Calculation;
import provender.engine.reference.Reference;

/** The engine with its tables read: opens tanks and answers single calculations. */
public final class Bench {
  private final Reference reference;

  Bench(Reference reference) {
    this.reference = reference;
  }

  /** A new, empty tank. */
  @JSExport
  public Book tank() {
    return new Book(reference);
  }

  /** One call of the calculation contract; faults come back as {@code {errors: [{field, takes}]}}. */
  @JSExport
  public JSObject calc(String name, JSObject input) {
    return JsTree.of(Calculation.answer(name, new JsNode(input), reference));
  }
}
