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
