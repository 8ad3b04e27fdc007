package provender.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import provender.HowLong;
import provender.Phone;
import provender.RunningServer;

/** A browser that is killed while somebody taps, again and again over the same profile. */
class KilledBrowserIT {
  private static final int KILLS = HowLong.times(5, 100);
  private static final double GRAMS = 7.25;
  private static final String TAPS =
      "() => { const { desk } = document.querySelector('feed-page'); (async () => { for (;;) {"
          + " const { id } = await desk.record('feeding', { items: [{ food: 'nori_dried', grams: " + GRAMS + " }] });"
          + " console.log('saved ' + id); await new Promise((later) => setTimeout(later, 5)); } })(); }";

  private final RunningServer server = RunningServer.fresh("killed-browser");
  private final Playwright playwright = Playwright.create(
      new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
  private Process chromium;

  @AfterEach
  void close() throws InterruptedException {
    kill();
    playwright.close();
    server.close();
  }

  @Test
  void what_was_called_saved_survives_every_kill_and_reaches_the_server_exactly_once() throws Exception {
    long seed = Long.getLong("faults.seed", System.nanoTime());
    Random random = new Random(seed);
    Path profile = Files.createTempDirectory(Path.of("target"), "profile").toAbsolutePath();
    Set<String> saved = new LinkedHashSet<>();
    Page page = opened(profile);
    signIn(page);
    for (int kill = 1; kill <= KILLS; kill++) {
      page.onConsoleMessage(message -> {
        if (message.text().startsWith("saved ")) {
          saved.add(message.text().substring("saved ".length()));
        }
      });
      page.evaluate(TAPS);
      page.waitForTimeout(100 + random.nextInt(600));
      kill();
      page = opened(profile);
      page.locator("feed-page .tile").first().waitFor();
    }
    // The session's cookie may not have been on disk yet when a kill came; the records are.
    if (Boolean.TRUE.equals(page.evaluate("document.querySelector('feed-page').desk.syncNow()"
        + " ?? fetch('/api/v1/session').then(({ status }) => status === 401)"))) {
      page.navigate(server.url() + "/#/sign-in");
      signIn(page);
    }
    Glass.until(page, "async () => { await new Promise((later) => setTimeout(later, 400)); const { desk } = document.querySelector('feed-page') ?? {}; desk?.syncNow();"
        + " return desk?.status.state === 'sent' && desk.status.unsent === 0; }", null);

    Phone phone = Phone.signedIn(server.url(), Glass.NAME, Glass.PASSWORD);
    List<String> ids = new ArrayList<>();
    List<Long> numbers = new ArrayList<>();
    for (JsonNode entry : phone.pullAll(phone.tanks().get(0))) {
      if (entry.path("body").path("items").path(0).path("grams").asDouble() == GRAMS) {
        ids.add(entry.path("id").asText());
        numbers.add(entry.path("deviceSeq").asLong());
      }
    }
    System.out.println(KILLS + " browser kills: " + saved.size() + " taps called saved, " + ids.size() + " kept; seed " + seed);
    assertThat(ids).as("seed " + seed).doesNotHaveDuplicates().containsAll(saved);
    assertThat(saved).isNotEmpty();
    assertThat(numbers.stream().sorted().toList()).as("no tap is missing between two").isEqualTo(LongStream.rangeClosed(1, ids.size()).boxed().toList());
    assertThat(page.evaluate("async () => (await new Promise((done) => { const asked = indexedDB.open('provender'); asked.onsuccess = () => {"
        + " const all = asked.result.transaction('entries').objectStore('entries').getAll(); all.onsuccess = () => done(all.result); }; }))"
        + ".filter(({ body }) => body.items?.[0]?.grams === " + GRAMS + ").length")).isEqualTo(ids.size());
  }

  private static void signIn(Page page) {
    page.locator("sign-in input[name=name]").fill(Glass.NAME);
    page.locator("sign-in input[name=password]").fill(Glass.PASSWORD);
    page.locator("sign-in button.primary").click();
    page.locator("feed-page .tile").first().waitFor();
  }

  private Page opened(Path profile) throws Exception {
    Path port = profile.resolve("DevToolsActivePort");
    Files.deleteIfExists(port);
    for (String lock : List.of("SingletonLock", "SingletonCookie", "SingletonSocket")) {
      Files.deleteIfExists(profile.resolve(lock));
    }
    List<String> command = new ArrayList<>(List.of(Chromium.executable().toString(), "--headless=new", "--remote-debugging-port=0",
        "--user-data-dir=" + profile, "about:blank"));
    command.addAll(2, Chromium.ARGUMENTS);
    chromium = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(Path.of("target", "killed-chromium.log").toFile()).start();
    for (int i = 0; i < 600 && !isWritten(port); i++) {
      Thread.sleep(50);
    }
    Browser browser = playwright.chromium().connectOverCDP("http://127.0.0.1:" + Files.readAllLines(port).get(0));
    Page page = browser.contexts().get(0).pages().get(0);
    page.navigate(server.url());
    return page;
  }

  private static boolean isWritten(Path port) throws IOException {
    return Files.exists(port) && Files.readAllLines(port).size() > 1;
  }

  private void kill() throws InterruptedException {
    chromium.descendants().forEach(ProcessHandle::destroyForcibly);
    chromium.destroyForcibly().waitFor(20, TimeUnit.SECONDS);
  }
}
