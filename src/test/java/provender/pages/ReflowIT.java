package provender.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class ReflowIT {
  private final Glass glass = new Glass();

  @AfterEach
  void close() {
    glass.close();
  }

  @Test
  void no_page_needs_scrolling_sideways_on_a_narrow_phone_or_on_its_side() {
    List<String> wide = new ArrayList<>();
    look(320, 640, "100%", wide);
    look(844, 390, "100%", wide);
    assertThat(wide).isEmpty();
  }

  private void look(int width, int height, String text, List<String> wide) {
    Page page = glass.signedIn("light", width, height);
    page.evaluate("text => document.documentElement.style.fontSize = text", text);
    for (String where : EveryPageIT.PAGES) {
      page.navigate(glass.url() + "/#/" + where);
      page.waitForTimeout(400);
      int over = ((Number) page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth")).intValue();
      if (over > 0) {
        wide.add(where + " at " + width + "x" + height + " " + text + ": " + over + " px too wide");
      }
    }
    page.context().close();
  }
}
