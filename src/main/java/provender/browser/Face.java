package provender.browser;

import org.teavm.jso.JSExport;
import org.teavm.jso.JSObject;
import provender.contract.TankBook;
import provender.engine.reference.Reference;

/** The exports of the engine's module: {@code open(reference)} gives a bench to work at. */
public final class Face {
  private Face() {}

  /**
   * Opens the engine over the published tables.
   *
   * @param reference the object in {@code shared/reference.json}
   */
  @JSExport
  public static Bench open(JSObject reference) {
    return new Bench(Reference.of(new JsNode(reference)));
  }

  /** How many days' feedings a day is reckoned from; older ones change nothing but when the log began. */
  @JSExport
  public static int lookBackDays() {
    return TankBook.LOOK_BACK_DAYS;
  }
}
