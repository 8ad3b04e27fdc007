package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class AtTheGlassIT {
  /** What the system would do is written down instead, since no machine for tests has a screen to keep lit or a motor. */
  private static final String WITNESS =
      "window.felt = []; window.lit = 0; Navigator.prototype.vibrate = (pattern) => { felt.push(pattern.length); return true; };"
          + " WakeLock.prototype.request = async () => { lit++; return { release: async () => { lit--; } }; };";

  private final Glass glass = new Glass();

  @AfterEach
  void close() {
    glass.close();
  }

  @Test
  void the_screen_stays_on_when_wanted_and_each_time_the_app_opens_again() {
    Page page = watched();
    page.navigate(glass.url() + "/#/more");
    page.locator("glass-options input[name=awake]").check();
    Glass.until(page, "() => lit === 1", null);
    page.reload();
    Glass.until(page, "() => window.lit === 1", null);
    page.locator("glass-options input[name=awake]").uncheck();
    Glass.until(page, "() => lit === 0", null);
  }

  @Test
  void a_saved_feeding_can_be_felt_unless_nobody_wants_to() {
    Page page = watched();
    feed(page);
    Glass.until(page, "() => felt.join() === '1'", null);
    page.navigate(glass.url() + "/#/more");
    page.locator("glass-options input[name=buzz]").uncheck();
    page.navigate(glass.url() + "/#/feed");
    feed(page);
    assertThat(page.locator("undo-toast")).containsText("Saved");
    Glass.until(page, "() => felt.join() === '1'", null);
  }

  private Page watched() {
    Page page = glass.signedIn();
    page.addInitScript(WITNESS);
    page.reload();
    page.locator("feed-page .tile").first().waitFor();
    return page;
  }

  private static void feed(Page page) {
    page.locator("feed-page .tile").first().click();
    page.locator("feeding-tray button.deed").click();
    Glass.isAnotherOne(page);
    assertThat(page.locator("undo-toast")).containsText("Saved");
  }
}
