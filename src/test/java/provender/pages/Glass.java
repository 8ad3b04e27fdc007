package provender.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import java.net.URI;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import provender.RunningServer;
import provender.shell.SingleModules;

/** A server with the demo and phones that open it, each with a store of its own. */
final class Glass implements AutoCloseable {
  static final String NAME = "Teo";
  static final String PASSWORD = "demo-lantern-teo";
  static final List<String> THEMES = List.of("light", "dark", "red");
  static final List<int[]> SIZES = List.of(new int[] {390, 844}, new int[] {1280, 800});
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  private RunningServer server = RunningServer.fresh("pages");
  private final Chromium chromium;

  Glass() {
    this(List.of());
  }

  /** @param more arguments for the browser */
  Glass(List<String> more) {
    chromium = new Chromium(more);
  }

  String url() {
    return server.url();
  }

  void killServer() {
    server.kill();
  }

  void startServerAgain(String... options) {
    server = server.again(options);
  }

  RunningServer server() {
    return server;
  }

  /** A phone of its own with Teo signed in and the tank open. */
  Page signedIn() {
    return signedIn("light", 390, 844);
  }

  Page signedIn(String theme, int width, int height) {
    Page page = stranger(theme, width, height);
    enter(page);
    return page;
  }

  /** The steward of the tank whose feeders and water need a hand. */
  Page signedInAsWenna() {
    Page page = stranger("light", 390, 844);
    enter(page, "Wenna", "demo-lantern-wenna");
    return page;
  }

  Page stranger(String theme, int width, int height) {
    return stranger(theme, width, height, "en-GB");
  }

  /** @param locale what the browser asks for */
  Page stranger(String theme, int width, int height, String locale) {
    BrowserContext context =
        chromium.browser().newContext(new Browser.NewContextOptions()
            .setViewportSize(width, height)
            .setLocale(locale)
            .setColorScheme(theme.equals("light") ? ColorScheme.LIGHT : ColorScheme.DARK));
    // The app holds its modules joined; a test that works with one alone gets it at the address of its source.
    context.route(Pattern.compile(".*/(store|sync)/[a-z-]+\\.js$"), asked -> asked.fulfill(new Route.FulfillOptions()
        .setContentType("text/javascript").setBody(SingleModules.at(URI.create(asked.request().url()).getPath()))));
    Page page = context.newPage();
    page.navigate(url());
    page.locator("sign-in input[name=name]").waitFor();
    page.evaluate("theme => localStorage.setItem('provender.theme', theme)", theme);
    return page;
  }

  void enter(Page page) {
    enter(page, NAME, PASSWORD);
  }

  void enter(Page page, String name, String password) {
    page.locator("sign-in input[name=name]").fill(name);
    page.locator("sign-in input[name=password]").fill(password);
    page.locator("sign-in button.primary").click();
    Locator tile = page.locator("feed-page .tile").first();
    Locator tank = page.locator("tank-list button").first();
    tile.or(tank).first().waitFor();
    if (!tile.isVisible()) {
      tank.click();
      tile.waitFor();
    }
    reckoned(page);
  }

  /** Tiles are there before the day is reckoned. */
  static void reckoned(Page page) {
    until(page, "() => document.querySelector('#main > *').desk.today !== null", null);
  }

  /** Somebody of the demo may have fed within ten minutes, depending on the time of day at which this runs. */
  static void isAnotherOne(Page page) {
    page.waitForTimeout(300);
    if (page.locator("same-feeding button").count() > 0) {
      page.locator("same-feeding button").first().click();
    }
  }

  /** Kept for offline use: the service worker holds the shell. */
  static void settled(Page page) {
    until(page, "() => navigator.serviceWorker.ready.then(() => true)", null);
  }

  /** The page's own policy forbids the browser driver's repeated evaluation, so the asking is done from here. What is not there yet is waited for. */
  static void until(Page page, String wanted, @Nullable Object argument) {
    long patience = System.nanoTime() + PATIENCE.toNanos();
    String asked = "async argument => { try { return await (" + wanted + ")(argument); } catch (notYet) { if (notYet instanceof TypeError) return false; throw notYet; } }";
    while (!Boolean.TRUE.equals(page.evaluate(asked, argument))) {
      assertThat(System.nanoTime()).as("waited a minute for " + wanted).isLessThan(patience);
      page.waitForTimeout(100);
    }
  }

  /** No fault that WCAG 2.2 AA knows; the picture is kept to be looked at. */
  static void isFreeOfFaults(Page page, String where, String theme, int width) {
    isFree(page, where, theme, width, axe -> axe.withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa")));
  }

  /** None of those faults that depend on the light. */
  static void hasColoursToRead(Page page, String where, String theme, int width) {
    isFree(page, where, theme, width, axe -> axe.withRules(List.of("color-contrast", "link-in-text-block")));
  }

  private static void isFree(Page page, String where, String theme, int width, UnaryOperator<AxeBuilder> rules) {
    page.screenshot(new Page.ScreenshotOptions()
        .setPath(Path.of("target", "screens", where + "-" + theme + "-" + width + ".png")));
    var size = page.viewportSize();
    int whole = ((Number) page.evaluate("document.documentElement.scrollHeight")).intValue();
    // In full length, so that nothing is half hidden behind the bar of destinations and nothing is left unlooked at.
    page.setViewportSize(size.width, Math.max(size.height, whole + 100));
    AxeRunOptions faultsOnly = new AxeRunOptions();
    faultsOnly.setResultTypes(List.of("violations"));
    // No page of ours frames another, so that all can be done in this one.
    AxeBuilder axe = new AxeBuilder(page).setLegacyMode(true).options(faultsOnly);
    var violations = rules.apply(axe).analyze().getViolations();
    page.setViewportSize(size.width, size.height);
    assertThat(violations.stream().map(one -> one.getId() + " " + one.getNodes().get(0).getHtml()).toList())
        .as(where + " " + theme + " " + width).isEmpty();
  }

  @Override
  public void close() {
    chromium.close();
    server.close();
  }
}
