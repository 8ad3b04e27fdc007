package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import provender.RunningServer;

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

  @Test
  void the_page_that_hands_out_the_authority_says_what_to_compare_and_where_to_tap() throws IOException {
    int port;
    try (ServerSocket free = new ServerSocket(0)) {
      port = free.getLocalPort();
    }
    try (RunningServer server =
        RunningServer.fresh("trust", "-Dprovender.lan.names=tank.example,192.168.1.20", "-Dquarkus.http.ssl-port=" + port)) {
      Page page = glass.stranger("light", 390, 844);
      page.navigate("http://tank.example:" + URI.create(server.url()).getPort() + "/#/trust");
      assertThat(page.locator("trust-page")).containsText("tank.example and 192.168.1.20");
      assertThat(page.locator("trust-page output")).containsText(Pattern.compile("([0-9A-F]{2}:){31}[0-9A-F]{2}"));
      assertThat(page.locator("trust-page ul a").first()).hasAttribute("href", "https://tank.example:" + port + "/");
      page.locator("trust-page summary").first().click();
      Glass.isFreeOfFaults(page, "trust", "light", 390);
      Download authority = page.waitForDownload(() -> page.locator("trust-page a.deed").click());
      org.assertj.core.api.Assertions.assertThat(authority.path()).hasSameBinaryContentAs(server.data().resolve("lan").resolve("ca.crt"));
    }
  }
}
