package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The week looked back on, with no server to be had, on the phone and on paper. */
class WeekIT {
  private final Glass glass = new Glass();

  @AfterEach
  void close() {
    glass.close();
  }

  @Test
  void the_week_says_what_to_change_and_steps_back_to_one_in_which_all_was_well() {
    Page page = glass.signedIn();
    Glass.settled(page);
    glass.killServer();
    page.navigate(glass.url() + "/#/week");
    assertThat(page.locator("week-page ol li")).hasCount(3);
    assertThat(page.locator("week-page ol li").first()).containsText("nori");
    assertThat(page.locator("week-chart canvas")).isVisible();
    page.locator("week-chart summary").click();
    assertThat(page.locator("week-chart tbody tr")).hasCount(13);
    page.locator("week-page ol .why").first().click();
    assertThat(page.locator("why-dialog dialog[open]")).isVisible();
    page.keyboard().press("Escape");

    page.getByText("Earlier", new Page.GetByTextOptions().setExact(true)).click();
    page.getByText("Earlier", new Page.GetByTextOptions().setExact(true)).click();
    page.getByText("Earlier", new Page.GetByTextOptions().setExact(true)).click();
    assertThat(page.locator("week-page article .flag")).hasCount(0);
    page.getByText("Later", new Page.GetByTextOptions().setExact(true)).click();
    assertThat(page.locator("week-page article").first()).isVisible();
  }

  @Test
  void on_paper_there_is_the_week_and_nothing_to_tap() {
    Page page = glass.signedIn("light", 1280, 800);
    page.navigate(glass.url() + "/#/week");
    page.locator("week-page article").first().waitFor();
    page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
    assertThat(page.locator("nav-bar")).isHidden();
    assertThat(page.getByText("Earlier", new Page.GetByTextOptions().setExact(true))).isHidden();
    assertThat(page.locator("week-page article").first()).isVisible();
  }
}
