package provender.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.net.URI;
import java.util.List;
import java.util.UUID;
import java.util.regex.Pattern;
import provender.Phone;
import provender.RunningServer;
import provender.shell.SingleModules;

/**
 * Prints what a phone takes to fetch a year of a busy tank that it has never seen, beside what its browser takes to put the same objects,
 * already at hand, into a store with the same indexes in one transaction.
 */
public final class FirstSyncBenchmark {
  private static final int DAYS = 365;
  private static final int BATCH = 250;
  private static final int ROUNDS = 7;
  private static final ObjectMapper JSON = new ObjectMapper();

  private static final String SIGN_IN = """
      async () => {
        const body = JSON.stringify({ name: "Maren", password: "demo-lantern-maren" });
        const said = await fetch("/api/v1/session", { method: "POST", body, headers: { "Content-Type": "application/json" } });
        if (!said.ok) throw new Error(`signing in: ${said.status}`);
      }""";

  private static final String FIRST_SYNC = """
      async ([tank, name]) => {
        const { PhoneStore } = await import("/store/phone-store.js");
        const { Exchange } = await import("/sync/exchange.js");
        const store = new PhoneStore(name);
        await store.device();
        await store.copy.follow(tank);
        const exchange = new Exchange(store, { entries() {}, reread() {}, tanks() {}, clock() {} });
        const start = performance.now();
        await exchange.round();
        const took = performance.now() - start;
        window.all = await store.entriesOf(tank);
        await store.close();
        return [took, all.length];
      }""";

  private static final String BULK_PUT = """
      async ([name]) => {
        const { PhoneStore } = await import("/store/phone-store.js");
        const empty = new PhoneStore(name);
        await empty.device();
        await empty.close();
        const database = await new Promise((opened) => {
          const opening = indexedDB.open(name);
          opening.onsuccess = () => opened(opening.result);
        });
        const start = performance.now();
        await new Promise((done, failed) => {
          const transaction = database.transaction(["entries"], "readwrite", { durability: "strict" });
          for (const entry of all) transaction.objectStore("entries").put(entry);
          transaction.oncomplete = done;
          transaction.onabort = () => failed(transaction.error);
        });
        const took = performance.now() - start;
        database.close();
        return took;
      }""";

  private FirstSyncBenchmark() {}

  public static void main(String[] arguments) throws Exception {
    try (RunningServer server = RunningServer.fresh("first-sync", RunningServer.FULLY_COMPILED); Handset handset = new Handset()) {
      Phone phone = Phone.signedIn(server.url(), "Maren", "demo-lantern-maren");
      String tank = JSON.readTree(phone.post("/api/v1/households/quernhaven/tanks", "{\"name\":\"Year\",\"zone\":\"Europe/Berlin\"}").body())
          .path("id").asText();
      int entries = push(phone, tank);
      Page page = handset.page(1);
      page.route(Pattern.compile(".*/(store|sync)/[a-z-]+\\.js$"), asked -> asked.fulfill(new Route.FulfillOptions()
          .setContentType("text/javascript").setBody(SingleModules.at(URI.create(asked.request().url()).getPath()))));
      page.navigate(server.url() + "/manifest.webmanifest");
      page.evaluate(SIGN_IN);
      Times syncs = new Times();
      Times puts = new Times();
      for (int round = 0; round < ROUNDS; round++) {
        List<?> synced = (List<?>) page.evaluate(FIRST_SYNC, List.of(tank, "sync " + round));
        if (((Number) synced.get(1)).intValue() != entries) {
          throw new IllegalStateException(synced.get(1) + " of " + entries + " entries came");
        }
        syncs.add(synced.get(0));
        puts.add(page.evaluate(BULK_PUT, List.of("put " + round)));
      }
      System.out.printf("first sync of %d entries: %s%n", entries, syncs);
      System.out.printf("bulk put of the same objects:    %s%n", puts);
      System.out.printf("ratio of the medians %.2f (<= 2)%n", syncs.part(0.5) / puts.part(0.5));
    }
  }

  private static int push(Phone phone, String tank) throws Exception {
    String device = UUID.randomUUID().toString();
    List<JsonNode> entries = BusyTank.entries(DAYS, EngineBenchmark.TEN_YEARS_FEEDINGS).stream().<JsonNode>map(entry -> {
      ObjectNode written = JSON.valueToTree(entry);
      return written.put("tank", tank).put("device", device).put("by", phone.keeper()).put("zone", "Europe/Berlin")
          .put("recordedAt", "2026-11-25T12:00:00Z").without("seq");
    }).toList();
    for (int from = 0; from < entries.size(); from += BATCH) {
      JsonNode said = phone.push(tank, entries.subList(from, Math.min(entries.size(), from + BATCH)).toArray(JsonNode[]::new));
      for (JsonNode answer : said.path("answers")) {
        if (!answer.path("outcome").asText().equals("accepted")) {
          throw new IllegalStateException(answer.toString());
        }
      }
    }
    return entries.size();
  }
}
