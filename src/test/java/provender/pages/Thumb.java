package provender.pages;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ScreenshotType;
import java.nio.file.Path;

/** One thumb that counts what it does, and a camera beside it. */
final class Thumb {
  private final Page page;
  private final String walk;
  private int taps;
  private int fields;

  /** @param walk names the pictures */
  Thumb(Page page, String walk) {
    this.page = page;
    this.walk = walk;
  }

  void tap(String where) {
    tap(page.locator(where).first());
  }

  void tap(String where, String words) {
    tap(page.locator(where, new Page.LocatorOptions().setHasText(words)).first());
  }

  void tap(Locator where) {
    where.click();
    taps++;
  }

  /** A field that is tapped and typed into. */
  void type(String where, String words) {
    page.locator(where).first().fill(words);
    fields++;
  }

  /** Keeps the screen as it is now in {@code target/walk}. */
  void look(String what) {
    page.waitForTimeout(400);
    page.screenshot(new Page.ScreenshotOptions().setType(ScreenshotType.JPEG).setQuality(80)
        .setPath(Path.of("target", "walk", walk + "-" + what + ".jpg")));
  }

  /** Such as "2 taps" or "4 taps, 1 field". */
  String did() {
    return taps + " taps" + (fields == 0 ? "" : fields == 1 ? ", 1 field" : ", " + fields + " fields");
  }
}
