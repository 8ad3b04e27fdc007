package provender.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.microsoft.playwright.Page;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A part that comes later must not push away what a thumb is on its way to. */
class SteadyIT {
  /** Web Vitals, "Cumulative Layout Shift": 0.1 or less is good. */
  private static final double GOOD = 0.1;

  private static final String ADD_UP_WHAT_MOVES =
      """
      window.moved = 0;
      new PerformanceObserver((list) => list.getEntries().forEach(({ value }) => (window.moved += value))).observe({ type: "layout-shift", buffered: true });
      """;

  private final Glass glass = new Glass();

  @AfterEach
  void close() {
    glass.close();
  }

  @Test
  void nothing_that_stands_on_a_page_moves_while_its_other_parts_come() {
    for (int[] size : Glass.SIZES) {
      Page page = glass.signedIn("light", size[0], size[1]);
      page.addInitScript(ADD_UP_WHAT_MOVES);
      slow(page);
      Map<String, Double> moved = new TreeMap<>();
      // The page at the tank last: by then the phone holds what it is drawn from before the day is reckoned.
      for (String where : List.of("today", "week", "fish", "water", "more", "feed")) {
        page.navigate("about:blank");
        page.navigate(glass.url() + "/#/" + where);
        Glass.until(page, "() => Boolean(document.querySelector('main > *')?.desk?.today)", null);
        page.waitForTimeout(700);
        moved.put(where, ((Number) page.evaluate("window.moved")).doubleValue());
      }
      assertThat(moved).as("at %d x %d", size[0], size[1]).allSatisfy((where, sum) -> assertThat(sum).isLessThan(GOOD));
      page.context().close();
    }
  }

  /** So that a frame is painted between most parts. */
  private static void slow(Page page) {
    var rate = new JsonObject();
    rate.addProperty("rate", 4);
    page.context().newCDPSession(page).send("Emulation.setCPUThrottlingRate", rate);
  }
}
