package provender.bench;

import com.google.gson.JsonObject;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** A Chromium of the size of a phone, to be slowed down, with a note of every task that held the page up. */
final class Handset implements AutoCloseable {
  private static final String NOTE_LONG_TASKS = """
      window.longTasks = [];
      new PerformanceObserver((list) => window.longTasks.push(...list.getEntries().map(({ duration }) => duration)))
        .observe({ type: "longtask", buffered: true });
      window.until = async (seen) => {
        do await new Promise((next) => requestAnimationFrame(next));
        while (!seen());
      };
      // What is there when a frame begins is painted in it; a message sent meanwhile arrives right after.
      window.painted = async (seen) => {
        await until(seen);
        const { port1, port2 } = new MessageChannel();
        await new Promise((after) => {
          port1.onmessage = after;
          port2.postMessage(0);
        });
        return performance.now();
      };""";

  private final Playwright playwright = Playwright.create(
      new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
  private final Browser browser = playwright.chromium().launch(new BrowserType.LaunchOptions()
      .setExecutablePath(Path.of(System.getenv().getOrDefault("CHROMIUM", "/usr/bin/chromium")))
      .setArgs(List.of("--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking")));
  private final BrowserContext context = browser.newContext(new Browser.NewContextOptions().setViewportSize(390, 844));

  Handset() {
    context.addInitScript(NOTE_LONG_TASKS);
  }

  /** An empty page whose main thread runs so many times slower. */
  Page page(int slower) {
    Page page = context.newPage();
    CDPSession session = context.newCDPSession(page);
    JsonObject rate = new JsonObject();
    rate.addProperty("rate", slower);
    session.send("Emulation.setCPUThrottlingRate", rate);
    return page;
  }

  @Override
  public void close() {
    browser.close();
    playwright.close();
  }
}
