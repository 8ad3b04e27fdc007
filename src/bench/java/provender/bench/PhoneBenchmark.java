package provender.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.microsoft.playwright.Page;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import provender.Phone;
import provender.RunningServer;

/**
 * Prints what a keeper waits for on a slow phone that holds ten years of a busy tank and whose server is gone. The entries are
 * put into the phone's store as a pull would have put them. {@code -Dphone.days=N} for fewer days, {@code -Dphone.slower=N} for another
 * throttle. Chromium slows the page only, not the engine's thread beside it.
 */
public final class PhoneBenchmark {
  private static final int DAYS = Integer.getInteger("phone.days", EngineBenchmark.TEN_YEARS);
  private static final int SLOWER = Integer.getInteger("phone.slower", 4);
  private static final int STARTS = 7;
  private static final int TAPS = 40;
  private static final int ROUNDS = 8;
  private static final int AT_ONCE = 5_000;
  private static final List<String> PLACES = List.of("today", "week", "fish", "feeders", "water", "more", "feed");
  private static final ObjectMapper JSON = new ObjectMapper();

  private static final String PUT = """
      ([entries, tank]) => new Promise((done, failed) => {
        const opening = indexedDB.open("provender");
        opening.onerror = () => failed(opening.error);
        opening.onblocked = () => failed(new Error("another page holds the store"));
        opening.onsuccess = () => {
          try { fill(opening.result); } catch (fault) { failed(fault); }
        };
        const fill = (database) => {
          const transaction = database.transaction(["entries", "cursors"], "readwrite");
          const all = JSON.parse(entries);
          for (const entry of all) transaction.objectStore("entries").put(entry);
          transaction.objectStore("cursors").put({ tank, after: all.at(-1).seq, epoch: null });
          transaction.oncomplete = () => { database.close(); done(true); };
          transaction.onabort = () => failed(transaction.error);
        };
      })""";

  /** From the beginning of the navigation until a tile was tapped and what it opens is painted. */
  private static final String FIRST_TAP = """
      async () => {
        const tile = await painted(() => document.querySelector("feed-page .tile"));
        document.querySelector("feed-page .tile").click();
        return [tile, await painted(() => document.querySelector("feeding-tray button.deed"))];
      }""";

  private static final String FIRST_PAINT = "() => performance.getEntriesByName('first-contentful-paint')[0].startTime";

  private static final String RECORD = """
      async () => {
        const start = performance.now();
        document.querySelector("feeding-tray button.deed").click();
        return await painted(() => document.querySelector("undo-toast button.undo")) - start;
      }""";

  private static final String SWITCH = """
      async (place) => {
        const start = performance.now();
        const before = document.querySelector("main > *");
        location.hash = `#/${place}`;
        return await painted(() => document.querySelector("main > * h1") && document.querySelector("main > *") !== before) - start;
      }""";

  private final Handset handset;
  private final String url;
  private final Times starts = new Times();
  private final Times tiles = new Times();
  private final Times firstPaints = new Times();
  private final Times taps = new Times();
  private final Times figures = new Times();
  private final Map<String, Times> switches = new TreeMap<>();
  private final Times allSwitches = new Times();
  private final Times longTasks = new Times();

  private PhoneBenchmark(Handset handset, String url) {
    this.handset = handset;
    this.url = url;
  }

  public static void main(String[] arguments) throws Exception {
    try (RunningServer server = RunningServer.fresh("phone-bench", RunningServer.FULLY_COMPILED); Handset handset = new Handset()) {
      System.out.printf("load of the machine: %s", Files.readString(Path.of("/proc/loadavg")));
      firstLoad(server.url());
      PhoneBenchmark bench = new PhoneBenchmark(handset, server.url());
      bench.fill(server);
      for (int i = 0; i < STARTS; i++) {
        bench.start();
      }
      bench.use();
      bench.print();
    }
  }

  /** What an empty phone fetches until it works with the server gone. */
  private static void firstLoad(String server) throws Exception {
    try (Wire wire = new Wire(server); Handset fresh = new Handset()) {
      Page page = fresh.page(1);
      page.navigate(wire.url());
      page.locator("sign-in input[name=name]").waitFor();
      long shown = wire.bytes();
      page.evaluate("() => navigator.serviceWorker.ready.then(() => true)");
      page.waitForTimeout(2000);
      System.out.printf("first load over the wire: %d KB until the first page shows, %d KB with all that is kept for offline%n",
          shown / 1000, wire.bytes() / 1000);
    }
  }

  private void fill(RunningServer server) throws Exception {
    Phone phone = Phone.signedIn(server.url(), "Maren", "demo-lantern-maren");
    String tank = JSON.readTree(phone.post("/api/v1/households/quernhaven/tanks", "{\"name\":\"Busy\",\"zone\":\"Europe/Berlin\"}").body())
        .path("id").asText();
    Page page = handset.page(1);
    page.navigate(url);
    page.locator("sign-in input[name=name]").fill("Maren");
    page.locator("sign-in input[name=password]").fill("demo-lantern-maren");
    page.locator("sign-in button.primary").click();
    page.locator("tank-list button", new Page.LocatorOptions().setHasText("Busy")).click();
    page.locator("feed-page h1").waitFor();
    page.evaluate("() => navigator.serviceWorker.ready.then(() => true)");
    page.waitForTimeout(2000);
    server.kill();
    page.close();
    Page filling = handset.page(1);
    filling.navigate(url + "/manifest.webmanifest");
    List<JsonNode> entries = BusyTank.entries(DAYS, EngineBenchmark.TEN_YEARS_FEEDINGS, LocalDate.now()).stream()
        .<JsonNode>map(entry -> pulled(JSON.valueToTree(entry), tank, phone.keeper())).toList();
    for (int from = 0; from < entries.size(); from += AT_ONCE) {
      filling.evaluate(PUT, List.of(JSON.writeValueAsString(entries.subList(from, Math.min(entries.size(), from + AT_ONCE))), tank));
    }
    System.out.printf("entries in the phone's store: %d%n", entries.size());
    filling.close();
    Page first = handset.page(1);
    first.navigate(url);
    first.evaluate("() => window.until(() => document.querySelector('feed-page')?.desk.today?.fish.length)");
    first.waitForTimeout(3000);
    first.close();
  }

  private static ObjectNode pulled(ObjectNode entry, String tank, String keeper) {
    return entry.put("tank", tank).put("by", keeper).put("zone", "Europe/Berlin").put("recordedAt", entry.path("happenedAt").asText());
  }

  private void start() {
    Page page = opened();
    page.close();
  }

  private Page opened() {
    Page page = handset.page(SLOWER);
    page.navigate(url);
    List<?> reached = (List<?>) page.evaluate(FIRST_TAP);
    tiles.add(reached.get(0));
    starts.add(reached.get(1));
    page.waitForTimeout(3000);
    firstPaints.add(page.evaluate(FIRST_PAINT));
    noteLongTasks(page);
    return page;
  }

  private void use() {
    Page page = opened();
    for (int i = 0; i < TAPS; i++) {
      if (page.locator("feeding-tray button.deed").count() == 0) {
        page.locator("feed-page .tile").nth(i % 6).click();
      }
      page.waitForTimeout(300);
      double before = ((Number) page.evaluate("() => document.querySelector('feed-page').desk.today.ration.givenKj.value")).doubleValue();
      taps.add(page.evaluate(RECORD));
      figures.add(page.evaluate("async (before) => { const start = performance.now(); await window.until(() =>"
          + " document.querySelector('feed-page').desk.today.ration.givenKj.value > before); return performance.now() - start; }", before));
      page.waitForTimeout(400);
      page.evaluate("() => document.querySelector('undo-toast').tell('')");
    }
    for (int round = 0; round < ROUNDS; round++) {
      for (String place : PLACES) {
        Object took = page.evaluate(SWITCH, place);
        switches.computeIfAbsent(place, name -> new Times()).add(took);
        allSwitches.add(took);
        page.waitForTimeout(700);
      }
    }
    noteLongTasks(page);
    page.close();
  }

  private void noteLongTasks(Page page) {
    ((List<?>) page.evaluate("() => window.longTasks.splice(0)")).forEach(longTasks::add);
  }

  private void print() throws Exception {
    System.out.printf("at %d times throttle, offline, load of the machine now %s", SLOWER, Files.readString(Path.of("/proc/loadavg")));
    line("cold start to the first paint", firstPaints);
    line("cold start to the first tile", tiles);
    line("cold start to the first tap answered (< 1000)", starts);
    line("tap to saved and painted (p95 < 100)", taps);
    line("from then to the figures that follow", figures);
    line("page switch (p95 < 200)", allSwitches);
    switches.forEach((place, times) -> line("  to " + place, times));
    line("tasks of over 50 ms (most < 200)", longTasks);
  }

  private static void line(String what, Times times) {
    System.out.printf("%-48s %s%n", what, times);
  }
}
