package provender.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import provender.HowLong;
import provender.Phone;

/** A backup put back while phones hold what was written since: an hour, a day or thirty days of feeding. */
class RestoredBackupIT {
  private static final String DESK = "document.querySelector('main > *').desk";
  private static final List<Integer> FEEDINGS_SINCE = List.of(1, 12, HowLong.times(90, 360));

  private final Glass glass = new Glass();

  @AfterEach
  void close() {
    glass.close();
  }

  @Test
  void phones_bring_back_what_an_old_backup_lacks_and_nothing_is_doubled() throws Exception {
    Path copy = glass.server().backup();
    Page teo = glass.signedIn();
    Page maren = glass.signedIn();
    int written = 0;
    for (int since : FEEDINGS_SINCE) {
      for (Page phone : List.of(teo, maren)) {
        isInStep(phone);
        phone.evaluate("async (times) => { for (let i = 0; i < times; i++) await " + DESK
            + ".record('feeding', { items: [{ food: 'mysis_frozen', grams: 1.125 }] }); }", since);
        written += since;
      }
      isInStep(teo);
      isInStep(maren);
      glass.killServer();
      glass.server().putBack(copy);
      glass.startServerAgain("-Dprovender.restored=true");
      // Their sessions are younger than the backup; until somebody signs in, everything stays on the phones.
      for (Page phone : List.of(teo, maren)) {
        Glass.until(phone, "() => { const desk = " + DESK + "; desk.syncNow(); return desk.status.why === 'signIn'; }", null);
        phone.navigate(glass.url() + "/#/sign-in");
        glass.enter(phone);
      }
      isInStep(teo);
      isInStep(maren);
      isInStep(teo);

      Phone phone = Phone.signedIn(glass.url(), Glass.NAME, Glass.PASSWORD);
      List<String> ids = phone.pullAll(phone.tanks().get(0)).stream()
          .filter(entry -> entry.path("body").path("items").path(0).path("grams").asDouble() == 1.125)
          .map((JsonNode entry) -> entry.path("id").asText()).toList();
      assertThat(ids).doesNotHaveDuplicates().hasSize(written);
      assertThat(copyOf(teo)).isEqualTo(copyOf(maren));
    }
  }

  /** Nothing waits, and all that the server has is here. */
  private static void isInStep(Page page) {
    Glass.until(page, "async () => { await new Promise((later) => setTimeout(later, 400)); const desk = " + DESK + "; desk.syncNow(); const tanks = await fetch('/api/v1/tanks').then((said) => said.json()).catch(() => null);"
        + " const head = tanks?.tanks?.find(({ id }) => id === desk.tank.id)?.head; const epoch = tanks?.tanks?.find(({ id }) => id === desk.tank.id)?.epoch;"
        + " const cursor = await new Promise((done) => { const asked = indexedDB.open('provender'); asked.onsuccess = () => {"
        + " const found = asked.result.transaction('cursors').objectStore('cursors').get(desk.tank.id);"
        + " found.onsuccess = () => { asked.result.close(); done(found.result); }; }; });"
        + " return desk.status.unsent === 0 && desk.status.state === 'sent' && cursor.after === head && cursor.epoch === epoch; }", null);
  }

  private static Object copyOf(Page page) {
    return page.evaluate("() => new Promise((done) => { const asked = indexedDB.open('provender'); asked.onsuccess = () => {"
        + " const found = asked.result.transaction('entries').objectStore('entries').getAll();"
        + " found.onsuccess = () => { asked.result.close(); done(JSON.stringify(found.result.map(({ receivedAt, ...entry }) => Object.entries(entry).sort())"
        + ".sort((one, other) => (JSON.stringify(one) < JSON.stringify(other) ? -1 : 1)))); }; }; })");
  }
}
