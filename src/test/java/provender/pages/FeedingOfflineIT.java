package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import provender.Phone;
import provender.RunningServer;
import provender.vectors.Vectors;

class FeedingOfflineIT {
  private static final String NAME = "Teo";
  private static final String PASSWORD = "demo-lantern-teo";

  private RunningServer server;
  private Chromium chromium;

  @BeforeEach
  void open() {
    server = RunningServer.fresh("pages");
    chromium = new Chromium();
  }

  @AfterEach
  void close() {
    chromium.close();
    server.close();
  }

  @Test
  void what_is_tapped_without_a_server_arrives_once_and_a_second_phone_sees_the_same() throws Exception {
    int before = feedings().size();
    Page page = signedIn(phone());
    until(page, "() => navigator.serviceWorker.ready.then(() => true)", null);
    server.kill();
    page.reload();
    assertThat(page.locator("feed-page .tile").first()).isVisible();
    double given = givenKj(page);

    record(page);
    record(page);
    double twice = givenKj(page);
    record(page);
    assertThat(page.getByText("on this phone").first()).isVisible();
    page.locator("undo-toast button.undo").click();
    until(page, "twice => Math.abs(document.querySelector('feed-page').desk.today.ration.givenKj.value - twice) < 1e-9",
        twice);
    double afterwards = givenKj(page);
    assertThat(afterwards).isGreaterThan(given);

    server = server.again();
    page.reload();
    until(page, "() => document.querySelector('feed-page')?.desk.status.unsent === 0 && "
        + "document.querySelector('feed-page').desk.status.state === 'sent'", null);
    List<JsonNode> stored = feedings();
    assertThat(stored).hasSize(before + 3);
    assertThat(stored.stream().map(entry -> entry.path("id").asText()).distinct()).hasSize(before + 3);

    Page second = signedIn(phone());
    until(second, "wanted => Math.abs(document.querySelector('feed-page')?.desk.today?.ration.givenKj.value - wanted)"
        + " <= 1e-9 * wanted", afterwards);
    assertThat(numbers(second)).isEqualTo(numbers(page));
  }

  @Test
  void offering_algae_takes_the_grazers_off_the_findings_without_a_server() {
    Page page = signedIn(phone());
    until(page, "() => navigator.serviceWorker.ready.then(() => true)", null);
    assertThat(rules(page)).contains("no-algae");
    server.kill();
    page.reload();
    page.locator("feed-page .tile").first().waitFor();
    page.evaluate("document.querySelector('feed-page').desk.record('feeding',"
        + " { items: [{ food: 'nori_dried', grams: 60 }] })");
    until(page, "() => !document.querySelector('feed-page').desk.today.findings.some(({ rule }) => rule === 'no-algae')", null);
    assertThat(rules(page)).doesNotContain("no-algae").contains("no-sponge");
  }

  @Test
  void the_phone_answers_every_vector_as_the_server_does_and_a_changed_one_fails() {
    Page page = signedIn(phone());
    for (Vectors.Vector vector : Vectors.all()) {
      Object answer = page.evaluate("([call, input]) => document.querySelector('feed-page').desk.calc(call, input)",
          List.of(vector.call(), vector.input()));
      assertThat(Vectors.differences(vector.expect(), answer)).as(vector.name()).isEmpty();
      if (vector.call().equals("meal-shares")) {
        assertThat(Vectors.differences(Map.of("leftoverGrams", 0.001), answer)).isNotEmpty();
      }
    }
  }

  @Test
  void every_page_is_free_of_accessibility_faults_in_every_light() {
    for (String theme : List.of("light", "dark", "red")) {
      for (int[] size : new int[][] {{390, 844}, {1280, 800}}) {
        BrowserContext context = chromium.browser().newContext(new Browser.NewContextOptions()
            .setViewportSize(size[0], size[1])
            .setColorScheme(theme.equals("light") ? ColorScheme.LIGHT : ColorScheme.DARK));
        Page page = context.newPage();
        page.navigate(server.url());
        page.locator("sign-in input[name=name]").waitFor();
        free(page, "sign-in", theme, size[0]);
        enter(page);
        page.evaluate("theme => document.documentElement.dataset.theme = theme", theme);
        for (String where : List.of("feed", "today", "fish", "more", "tanks", "sources")) {
          page.navigate(server.url() + "/#/" + where);
          page.evaluate("theme => document.documentElement.dataset.theme = theme", theme);
          page.waitForTimeout(300);
          free(page, where, theme, size[0]);
        }
        context.close();
      }
    }
  }

  private static void free(Page page, String where, String theme, int width) {
    page.screenshot(new Page.ScreenshotOptions().setPath(
        Path.of("target", "screens", where + "-" + theme + "-" + width + ".png")));
    var violations = new AxeBuilder(page)
        .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa")).analyze().getViolations();
    assertThat(violations.stream().map(one -> one.getId() + " " + one.getNodes().get(0).getHtml()).toList())
        .as(where + " " + theme + " " + width).isEmpty();
  }

  /** The page's own policy forbids the browser driver's repeated evaluation, so the asking is done from here. */
  private static void until(Page page, String wanted, @Nullable Object argument) {
    long patience = System.nanoTime() + Duration.ofSeconds(60).toNanos();
    while (!Boolean.TRUE.equals(page.evaluate(wanted, argument))) {
      assertThat(System.nanoTime()).as("waited a minute for " + wanted).isLessThan(patience);
      page.waitForTimeout(100);
    }
  }

  private Page phone() {
    BrowserContext context = chromium.browser().newContext(new Browser.NewContextOptions().setViewportSize(390, 844));
    return context.newPage();
  }

  private Page signedIn(Page page) {
    page.navigate(server.url());
    enter(page);
    return page;
  }

  private static void enter(Page page) {
    page.locator("sign-in input[name=name]").fill(NAME);
    page.locator("sign-in input[name=password]").fill(PASSWORD);
    page.locator("sign-in button.primary").click();
    Locator tile = page.locator("feed-page .tile").first();
    Locator tank = page.locator("tank-list button").first();
    tile.or(tank).first().waitFor();
    if (!tile.isVisible()) {
      tank.click();
      tile.waitFor();
    }
  }

  private static void record(Page page) {
    double before = givenKj(page);
    page.locator("feed-page .tile").first().click();
    page.locator("feeding-tray button.deed").click();
    until(page, "before => document.querySelector('feed-page').desk.today.ration.givenKj.value > before", before);
  }

  private static double givenKj(Page page) {
    return ((Number) page.evaluate("document.querySelector('feed-page').desk.today.ration.givenKj.value")).doubleValue();
  }

  private static Object numbers(Page page) {
    return page.evaluate("(({ ration, findings, fish }) => JSON.stringify([ration.givenKj.value, ration.dueKj.value,"
        + " findings.map(({ key, days }) => [key, days]), fish.map(({ id, gotKj }) => [id, gotKj.value])]))"
        + "(document.querySelector('feed-page').desk.today)");
  }

  @SuppressWarnings("unchecked")
  private static List<String> rules(Page page) {
    return (List<String>) page.evaluate(
        "document.querySelector('feed-page').desk.today.findings.map(({ rule }) => rule)");
  }

  private List<JsonNode> feedings() throws Exception {
    Phone phone = Phone.signedIn(server.url(), NAME, PASSWORD);
    return phone.pullAll(phone.tanks().get(0)).stream()
        .filter(entry -> entry.path("kind").asText().equals("feeding")).toList();
  }
}
