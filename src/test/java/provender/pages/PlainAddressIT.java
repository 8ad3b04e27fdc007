package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import java.net.URI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The app at an address that no browser holds for safe: plain http under a name. */
class PlainAddressIT {
  private final Glass glass = new Glass();

  @AfterEach
  void close() {
    glass.close();
  }

  @Test
  void over_plain_http_it_says_why_it_cannot_be_installed_and_logs_all_the_same() {
    Page page = glass.stranger("light", 390, 844);
    page.navigate("http://tank.example:" + URI.create(glass.url()).getPort() + "/");
    assertThat(page.locator("sign-in plain-address")).containsText("not encrypted");
    Glass.isFreeOfFaults(page, "sign-in-plain", "light", 390);
    glass.enter(page);
    page.locator("feed-page .tile").first().click();
    page.locator("feeding-tray button.deed").click();
    Glass.isAnotherOne(page);
    Glass.until(page, "() => document.querySelector('feed-page').desk.status.state === 'sent'"
        + " && document.querySelector('feed-page').desk.today.feedings.some(({ sent, by }) =>"
        + " sent && by === document.querySelector('feed-page').desk.keeper.id)", null);

    page.locator("nav-bar a[href='#/more']").click();
    assertThat(page.locator("more-page plain-address")).containsText("Cannot be installed");
    page.locator("more-page plain-address a").click();
    assertThat(page.locator("trust-page")).containsText("provender.lan.names");
    Glass.isFreeOfFaults(page, "trust-plain", "light", 390);
  }
}
