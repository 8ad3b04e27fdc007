package provender.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A phone whose copy of the journal was damaged notices by the server's sums, and fetches anew what differs. */
class SelfHealingIT {
  /** What a page of the app may do to its own database, in one transaction. */
  private static final String IN_DATABASE =
      """
      async (work) => {
        const database = await new Promise((opened, failed) => {
          const asked = indexedDB.open('provender');
          asked.onsuccess = () => opened(asked.result);
          asked.onerror = () => failed(asked.error);
        });
        const transaction = database.transaction(['entries', 'outbox', 'settings'], 'readwrite');
        const ended = new Promise((done) => (transaction.oncomplete = done));
        const rows = (store) => new Promise((done) => {
          const asked = transaction.objectStore(store).getAll();
          asked.onsuccess = () => done(asked.result);
        });
        const result = await work(transaction, rows);
        await ended;
        database.close();
        return result;
      }
      """;
  private static final String PLACED = "(await rows('entries')).filter(({ seq }) => seq).sort((a, b) => a.seq - b.seq)";

  private final Glass glass = new Glass();
  private Page page;

  @BeforeEach
  void a_phone_in_step() {
    page = glass.signedIn();
    isInStep();
  }

  @AfterEach
  void close() {
    glass.close();
  }

  @Test
  void what_is_missing_altered_or_out_of_its_place_is_fetched_anew_and_what_waits_is_left_alone() {
    Object before = inDatabase("async (transaction, rows) => JSON.stringify(" + PLACED + ".map(({ receivedAt, ...entry }) => entry))");
    page.context().route("**/entries", route -> {
      if (route.request().method().equals("POST")) {
        route.abort();
      } else {
        route.resume();
      }
    });
    page.evaluate("document.querySelector('feed-page').desk.record('feeding', { items: [{ food: 'nori_dried', grams: 60 }] })");
    Object waiting = waiting();
    inDatabase(
        "async (transaction, rows) => { const placed = " + PLACED + "; const entries = transaction.objectStore('entries');"
            + " for (const { id } of placed.slice(3, 6)) entries.delete(id);"
            + " entries.put({ ...placed[10], body: { ...placed[10].body, altered: true } });"
            + " const { seq, ...bare } = placed[20]; entries.put(bare); }");
    page.context().unroute("**/entries");
    looksAgain();
    Glass.until(page, "(before) => (" + IN_DATABASE + ")(async (transaction, rows) => JSON.stringify(" + PLACED
        + ".slice(0, JSON.parse(before).length).map(({ receivedAt, ...entry }) => entry)) === before)", before);
    isInStep();
    assertThat(inDatabase("async (transaction, rows) => JSON.stringify((await rows('entries')).filter(({ body }) => body.items?.[0]?.grams === 60).length)"))
        .isEqualTo("1");
    assertThat(waiting.toString()).contains("deviceSeq");
    assertThat(waiting()).isEqualTo("[]");
    assertThat(page.evaluate("async () => { const { desk } = document.querySelector('feed-page'); return (await desk.records.copyCheck(desk.tank.id)).mended; }"))
        .isEqualTo(5);
  }

  @Test
  void an_entry_of_this_phone_that_the_server_does_not_know_goes_out_again_and_one_of_another_is_kept_without_a_place() {
    inDatabase(
        "async (transaction, rows) => { const placed = " + PLACED + "; const device = await new Promise((done) => {"
            + " const asked = transaction.objectStore('settings').get('device'); asked.onsuccess = () => done(asked.result); });"
            + " const entries = transaction.objectStore('entries'); const last = placed.at(-1);"
            + " entries.put({ ...last, id: '00000000-0000-7000-8000-000000000001', device, deviceSeq: 900 });"
            + " entries.put({ ...last, id: '00000000-0000-7000-8000-000000000002', deviceSeq: 901 }); }");
    looksAgain();
    Glass.until(page, "() => (" + IN_DATABASE + ")(async (transaction, rows) => { const found = (await rows('entries'))"
        + ".filter(({ id }) => id.startsWith('00000000-0000-7000')); const waiting = await rows('outbox');"
        + " return found.length === 2 && waiting.length === 0 && found[0].seq > 0 && found[1].seq === undefined; })", null);
  }

  private Object waiting() {
    return inDatabase("async (transaction, rows) => JSON.stringify(await rows('outbox'))");
  }

  private void looksAgain() {
    page.evaluate("(({ desk }) => desk.records.checkCopy(desk.tank.id))(document.querySelector('feed-page'))");
  }

  private Object inDatabase(String work) {
    return page.evaluate("() => (" + IN_DATABASE + ")(" + work + ")");
  }

  private void isInStep() {
    Glass.until(page, "async () => { const { desk } = document.querySelector('feed-page');"
        + " return desk.status.state === 'sent' && desk.status.unsent === 0 && Boolean(await desk.records.copyCheck(desk.tank.id)); }", null);
  }
}
