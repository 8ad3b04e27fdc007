package provender.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class EveryPageIT {
  static final List<String> PAGES =
      List.of("feed", "today", "week", "fish", "fish/emperor", "more", "tanks", "join/some-code", "people", "round", "reset/some-code", "mailbox/some-code", "trust", "sources", "setup", "setup/tank/", "setup/add-fish",
          "setup/new-fish/Zebrasoma%20flavescens", "setup/size/emperor", "setup/measure/new", "setup/food/new",
          "setup/recipe/new", "feeders", "feeders/new", "feeders/part", "feeders/pellet-feeder/set", "feeders/pellet-feeder/fill",
          "feeders/pellet-feeder/weigh", "water", "water/test", "water/exchange", "water/dosing", "water/wanted", "records", "history/unknown");

  private final Glass glass = new Glass();

  @AfterEach
  void close() {
    glass.close();
  }

  @Test
  void every_page_is_free_of_accessibility_faults_in_every_light_and_at_both_sizes() {
    for (int[] size : Glass.SIZES) {
      Page page = glass.stranger("light", size[0], size[1]);
      inEveryLight(page, "sign-in", size[0]);
      glass.enter(page);
      for (String where : PAGES) {
        page.navigate(glass.url() + "/#/" + where);
        page.waitForTimeout(300);
        inEveryLight(page, where.replaceAll("[^a-z-]+", "-"), size[0]);
      }
      page.context().close();
    }
  }

  /** The same page stands in each light, so that what has no colour needs one look only. */
  private static void inEveryLight(Page page, String where, int width) {
    for (String theme : Glass.THEMES) {
      page.evaluate("theme => { document.documentElement.dataset.theme = theme; }", theme);
      if (theme.equals("light")) {
        Glass.isFreeOfFaults(page, where, theme, width);
      } else {
        Glass.hasColoursToRead(page, where, theme, width);
      }
    }
  }

  @Test
  void the_longer_words_of_German_do_no_page_harm_at_the_narrow_size() {
    Page page = glass.stranger("light", 390, 844, "de-DE");
    glass.enter(page);
    for (String where : List.of("feed", "today", "week", "fish/emperor", "more", "setup/food/new", "feeders", "water", "water/test")) {
      page.navigate(glass.url() + "/#/" + where);
      page.waitForTimeout(300);
      Glass.isFreeOfFaults(page, where.replaceAll("[^a-z-]+", "-"), "light-de", 390);
      assertThat(page.evaluate("document.documentElement.scrollWidth")).as(where).isEqualTo(390);
    }
  }
}
