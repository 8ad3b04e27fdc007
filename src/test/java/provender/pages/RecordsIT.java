package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import provender.Phone;

/** What waits for a person is said, and can be seen to, on one page. */
class RecordsIT {
  private static final String DESK = "document.querySelector('main > *').desk";

  private final Glass glass = new Glass();
  private Page page;

  @BeforeEach
  void a_phone_in_step() {
    page = glass.signedIn();
    isSent(page);
  }

  @AfterEach
  void close() {
    glass.close();
  }

  @Test
  void a_clock_two_hours_behind_is_said_and_put_right_with_one_tap_each_way() {
    clockIsOff(page, -2 * 60);
    String id = tapped(page);
    goTo(page, "records");
    assertThat(page.getByText("2 hours behind the server's")).isVisible();
    page.getByText("Move the 1 record of the last day by 2 hours").click();
    Glass.until(page, "async id => { const set = (await " + DESK + ".opened.history(id)).at(-1).body.set; return Boolean(set) && Math.abs(Date.parse(set.happenedAt) - Date.now() - 2 * 3600e3) < 90e3; }", id);
    page.getByText("Use the server's time").click();
    String right = tapped(page);
    Glass.until(page, "async id => Math.abs(Date.parse((await " + DESK + ".opened.history(id))[0].happenedAt) - Date.now() - 2 * 3600e3) < 90e3", right);
    goTo(page, "feed");
    goTo(page, "records");
    assertThat(page.getByText("New records carry the server's time").first()).isVisible();
    assertThat(page.getByText("of the last day by")).hasCount(0);
  }

  @Test
  void what_waits_for_a_day_is_said_on_every_page_and_travels_in_a_file_without_being_doubled() throws Exception {
    page.context().route("**/entries", route -> {
      if (route.request().method().equals("POST")) {
        route.abort();
      } else {
        route.resume();
      }
    });
    String id = tapped(page);
    Glass.until(page, "() => " + DESK + ".status.unsent === 1", null);
    clockIsOff(page, 25 * 60);
    page.locator("#waiting").getByText("waited for more than a day").waitFor();
    page.locator("#waiting").click();
    page.locator("records-page").getByText("The oldest unsent record").waitFor();
    Download saved = page.waitForDownload(() -> page.getByText("Save as a file").click());
    Path file = saved.path();

    Page other = glass.signedIn();
    goTo(other, "records");
    other.locator("records-page input[type=file]").setInputFiles(file);
    other.getByText("1 record taken in, 0 known already").waitFor();
    other.locator("records-page input[type=file]").setInputFiles(file);
    other.getByText("0 records taken in, 1 known already").waitFor();
    page.context().unroute("**/entries");
    page.evaluate(DESK + ".syncNow()");
    isSent(page);
    assertThat(page.locator("#waiting")).isHidden();
    Phone phone = Phone.signedIn(glass.url(), Glass.NAME, Glass.PASSWORD);
    assertThat(phone.pullAll(phone.tanks().get(0)).stream().filter(entry -> entry.path("id").asText().equals(id))).hasSize(1);
  }

  @Test
  void a_file_that_is_something_else_is_refused_with_a_word() {
    goTo(page, "records");
    page.locator("records-page input[type=file]").setInputFiles(
        new com.microsoft.playwright.options.FilePayload("holiday.json", "application/json", "{\"entries\": 3}".getBytes(java.nio.charset.StandardCharsets.UTF_8)));
    page.getByText("this is no file of unsent records").waitFor();
  }

  @Test
  void storage_cleared_under_an_open_page_loses_no_further_tap_and_is_reported_until_somebody_has_read_it() {
    int before = feedings(page);
    page.context().route("**/entries", route -> {
      if (route.request().method().equals("POST")) {
        route.abort();
      } else {
        route.resume();
      }
    });
    tapped(page);
    Glass.until(page, "() => " + DESK + ".status.unsent === 1", null);
    page.evaluate("() => new Promise((done) => { const asked = indexedDB.deleteDatabase('provender'); asked.onsuccess = done; })");
    tapped(page);
    page.context().unroute("**/entries");
    page.evaluate(DESK + ".syncNow()");
    page.locator("#waiting").getByText("storage was cleared").waitFor();
    Glass.until(page, "wanted => " + DESK + ".today.feedings.length === wanted && " + DESK + ".status.state === 'sent'", before + 1);
    page.reload();
    page.locator("#waiting").click();
    page.getByText("1 record had not been sent and is lost here").waitFor();
    page.getByText("I have read it").click();
    page.getByText("Nothing waits for you.").waitFor();
  }

  @Test
  void storage_cleared_between_two_visits_is_reported_after_signing_in_again() {
    page.navigate(glass.url() + "/manifest.webmanifest");
    page.evaluate("() => new Promise((done) => { const asked = indexedDB.deleteDatabase('provender'); asked.onsuccess = done; })");
    page.navigate(glass.url());
    page.locator("sign-in input[name=name]").waitFor();
    glass.enter(page);
    page.locator("#waiting").click();
    page.getByText("As far as is known, nothing was unsent.").waitFor();
  }

  @Test
  void a_full_phone_says_so_keeps_the_tray_and_saves_again_once_there_is_room() {
    int before = feedings(page);
    page.evaluate("() => { window.room = IDBObjectStore.prototype.add; IDBObjectStore.prototype.add = () => {"
        + " throw new DOMException('no room', 'QuotaExceededError'); }; }");
    page.locator("feed-page .tile").first().click();
    page.locator("feeding-tray button.deed").click();
    Glass.isAnotherOne(page);
    page.getByText("this phone's storage is full").waitFor();
    assertThat(feedings(page)).isEqualTo(before);
    page.evaluate("() => { IDBObjectStore.prototype.add = window.room; }");
    page.locator("feeding-tray button.deed").click();
    Glass.isAnotherOne(page);
    Glass.until(page, "wanted => " + DESK + ".today.feedings.length === wanted", before + 1);
    isSent(page);
  }

  @Test
  void every_hand_on_a_feeding_is_told_on_its_page() {
    String id = tapped(page);
    page.evaluate("id => " + DESK + ".amend(id, { 'body.leftoverGrams': 3 })", id);
    page.evaluate("id => " + DESK + ".amend(id, { 'body.leftoverGrams': 5 })", id);
    page.evaluate("id => " + DESK + ".withdraw(id, true)", id);
    goTo(page, "history/" + id);
    assertThat(page.locator("history-page li")).hasCount(4);
    page.getByText("It is taken back, and no figure counts it.").waitFor();
    assertThat(page.getByText("changed again later")).hasCount(1);
    assertThat(page.locator("history-page").getByText("Left over")).hasCount(2);
  }

  @Test
  void the_copy_is_compared_when_asked_and_the_browser_is_quoted_and_not_outdone_about_its_storage() {
    goTo(page, "records");
    page.getByText("Compare now").click();
    page.getByText("records are as on the server").waitFor();
    boolean lasting = (Boolean) page.evaluate("() => navigator.storage.persisted()");
    page.getByText(lasting ? "has promised to keep" : "has promised nothing").waitFor();
  }

  private static void clockIsOff(Page page, int minutes) {
    page.context().addInitScript("{ const Real = Date; const off = " + minutes + " * 60_000;"
        + " globalThis.Date = class extends Real { constructor(...given) { if (given.length) super(...given); else super(Real.now() + off); }"
        + " static now() { return Real.now() + off; } }; }");
    page.reload();
    page.locator("feed-page .tile").first().waitFor();
  }

  private static String tapped(Page page) {
    return (String) page.evaluate("async () => (await " + DESK + ".record('feeding', { items: [{ food: 'nori_dried', grams: 6 }] })).id");
  }

  private static int feedings(Page page) {
    return ((Number) page.evaluate(DESK + ".today.feedings.length")).intValue();
  }

  private void goTo(Page where, String place) {
    where.navigate(glass.url() + "/#/" + place);
    where.locator("page-head").waitFor();
  }

  private static void isSent(Page page) {
    Glass.until(page, "() => { const { status } = " + DESK + "; return status.state === 'sent' && status.unsent === 0 && status.lastContact !== null; }", null);
  }
}
