package provender.pages;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A real Chromium: the one named by CHROMIUM, the system's, or one installed from Debian's packages. */
final class Chromium implements AutoCloseable {
  private static final String USUAL = "/usr/bin/chromium";
  static final List<String> ARGUMENTS = List.of("--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
      "--host-resolver-rules=MAP *.example 127.0.0.1", "--disable-background-networking", "--disable-component-update", "--disable-sync");

  private final Playwright playwright = Playwright.create(
      new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
  private final Browser browser;

  Chromium() {
    this(List.of());
  }

  /** @param more arguments on top of the usual ones */
  Chromium(List<String> more) {
    browser = playwright.chromium().launch(new BrowserType.LaunchOptions()
        .setExecutablePath(executable())
        .setArgs(Stream.concat(ARGUMENTS.stream(), more.stream()).toList()));
  }

  Browser browser() {
    return browser;
  }

  /** A browser with a profile of its own on disk, as people have one; nothing is ever installed from a passing one. */
  BrowserContext withProfile(Path folder) {
    return playwright.chromium().launchPersistentContext(folder, new BrowserType.LaunchPersistentContextOptions()
        .setExecutablePath(executable()).setArgs(ARGUMENTS));
  }

  @Override
  public void close() {
    browser.close();
    playwright.close();
  }

  static Path executable() {
    String named = System.getenv().getOrDefault("CHROMIUM", USUAL);
    if (!Files.isExecutable(Path.of(named))) {
      install();
    }
    if (!Files.isExecutable(Path.of(named))) {
      throw new IllegalStateException("no Chromium at " + named + ": install Debian's package chromium,"
          + " run the tests as root on Debian, or name one in the environment variable CHROMIUM");
    }
    return Path.of(named);
  }

  private static void install() {
    try {
      Process apt = new ProcessBuilder("sh", "-c", "apt-get update && apt-get install -y --no-install-recommends chromium")
          .redirectErrorStream(true).redirectOutput(Path.of("target", "chromium-install.log").toFile()).start();
      apt.waitFor(10, TimeUnit.MINUTES);
    } catch (IOException noApt) {
      throw new IllegalStateException("no Chromium, and no apt-get to install one: set CHROMIUM to its path", noApt);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
