package provender.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReflowIT {
  /** As the system's own setting for large text does it; 16 pixels are usual. */
  private static final String TEXT_TWICE_AS_LARGE = "--blink-settings=defaultFontSize=32";

  @Test
  void no_page_needs_scrolling_sideways_on_a_narrow_phone_or_on_its_side() {
    try (Glass glass = new Glass()) {
      assertThat(tooWide(glass, 320, 640)).isEmpty();
      assertThat(tooWide(glass, 844, 390)).isEmpty();
    }
  }

  @Test
  void nor_with_text_twice_as_large() {
    try (Glass glass = new Glass(List.of(TEXT_TWICE_AS_LARGE))) {
      assertThat(tooWide(glass, 390, 844)).isEmpty();
    }
  }

  @Test
  void with_text_twice_as_large_what_is_on_the_tray_can_be_recorded_where_it_stands() {
    try (Glass glass = new Glass(List.of(TEXT_TWICE_AS_LARGE))) {
      Page page = glass.signedIn("light", 390, 844);
      page.evaluate("document.querySelector('feed-page .tile').click()");
      page.locator("feeding-tray button.deed").waitFor();
      assertThat(page.evaluate("""
          () => ["feeding-tray button.deed", "measure-steps .step:first-child", "measure-steps .step:last-child"].filter((part) => {
            const { x, y, width, height } = document.querySelector(part).getBoundingClientRect();
            return !document.elementFromPoint(x + width / 2, y + height / 2)?.closest(part);
          })""")).isEqualTo(List.of());
    }
  }

  @Test
  void on_a_wide_screen_the_button_that_records_stays_on_it_however_much_is_unfolded() {
    try (Glass glass = new Glass()) {
      Page page = glass.signedIn("light", 1280, 800);
      page.locator("feed-page .tile").first().click();
      page.locator("feeding-tray summary").click();
      page.locator("tray-extras fieldset").waitFor();
      assertThat(((Number) page.evaluate("document.querySelector('feeding-tray button.deed').getBoundingClientRect().bottom")).doubleValue()).isLessThanOrEqualTo(800);
    }
  }

  private static List<String> tooWide(Glass glass, int width, int height) {
    List<String> wide = new ArrayList<>();
    Page page = glass.signedIn("light", width, height);
    for (String where : EveryPageIT.PAGES) {
      page.navigate(glass.url() + "/#/" + where);
      page.waitForTimeout(400);
      int over = ((Number) page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth")).intValue();
      if (over > 0) {
        wide.add(where + " at " + width + "x" + height + ": " + over + " px too wide");
      }
    }
    page.context().close();
    return wide;
  }
}
