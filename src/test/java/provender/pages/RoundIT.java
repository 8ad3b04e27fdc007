package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class RoundIT {
  private static final String ALL_IN = "() => document.querySelectorAll('round-row').length === 3 && !document.querySelector('round-row .caution')"
      + " && [...document.querySelectorAll('round-row .weights')].filter((one) => one.textContent.trim() !== '').length >= 2";

  private final Glass glass = new Glass();

  @AfterEach
  void close() {
    glass.close();
  }

  @Test
  void whoever_looks_after_tanks_of_two_households_sees_them_all_by_weight_and_plans_the_visits_without_a_network() {
    Page maren = glass.stranger("light", 390, 844);
    glass.enter(maren, "Maren", "demo-lantern-maren");
    maren.navigate(glass.url() + "/#/tanks");
    maren.locator("household-tools summary").nth(1).click();
    maren.locator("household-tools record-form button.deed").nth(1).click();
    String link = maren.locator("output.link").textContent();

    Page wenna = glass.signedInAsWenna();
    Glass.settled(wenna);
    wenna.navigate(link);
    wenna.locator("join-page button.deed").click();
    Glass.until(wenna, "() => location.hash !== '' && !location.hash.startsWith('#/join')", null);
    wenna.navigate(glass.url() + "/#/round");
    Glass.until(wenna, ALL_IN, null);
    assertThat(names(wenna).get(0)).startsWith("Entrance hall").contains("Quernhaven Ferry Terminal");
    assertThat(wenna.locator("round-row").first()).containsText("last seven days");
    Glass.isFreeOfFaults(wenna, "round-of-three", "light", 390);

    wenna.locator("#round-order").selectOption("name");
    assertThat(names(wenna)).isSorted();
    assertThat(wenna.locator("visit-plan ol > li").first()).containsText("Entrance hall");
    assertThat(wenna.locator("visit-plan ul").first()).containsText("for Entrance hall");
    wenna.locator("round-row").first().locator("input[type=checkbox]").uncheck();
    assertThat(wenna.locator("visit-plan")).not().containsText("Entrance hall");

    glass.killServer();
    wenna.reload();
    Glass.until(wenna, ALL_IN, null);
    wenna.locator("round-row").first().getByRole(com.microsoft.playwright.options.AriaRole.BUTTON).click();
    assertThat(wenna.locator("today-page page-head")).containsText("Entrance hall");
  }

  private static List<String> names(Page page) {
    return page.locator("round-row h2").allTextContents();
  }
}
