package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import provender.Phone;
import provender.photo.Snapshot;

class PhotoIT {
  /** How many pictures lie on this phone. */
  private static final String HELD = """
      wanted => new Promise((done, failed) => {
        const asked = indexedDB.open('provender');
        asked.onerror = () => failed(asked.error);
        asked.onsuccess = () => {
          const all = asked.result.transaction('photos').objectStore('photos').getAll();
          all.onsuccess = () => {
            asked.result.close();
            done(all.result.filter(({ bytes }) => bytes.byteLength > 0).length === wanted);
          };
        };
      })""";

  private final Glass glass = new Glass();

  @AfterEach
  void close() {
    glass.close();
  }

  @Test
  void a_photo_taken_without_a_server_stays_with_its_feeding_arrives_after_it_and_is_seen_on_a_second_phone() throws Exception {
    Page page = glass.signedIn();
    Glass.settled(page);
    glass.killServer();
    page.locator("feed-page .tile").first().click();
    page.locator("feeding-tray summary").click();
    page.locator("tray-extras textarea").fill("The lips look sore");
    page.locator("tray-extras photo-picker input").setInputFiles(photo());
    page.locator("tray-extras photo-picker img").waitFor();
    page.locator("feeding-tray button.deed").click();
    Glass.isAnotherOne(page);
    assertThat(page.locator("feeding-row").first()).containsText("The lips look sore");
    assertThat(page.locator("feeding-row").first().locator("photo-strip img")).isVisible();
    Glass.until(page, "() => document.querySelector('feed-page').desk.status.photos === 1", null);

    page.reload();
    assertThat(page.locator("feeding-row").first().locator("photo-strip img")).isVisible();

    glass.startServerAgain();
    page.evaluate("document.querySelector('feed-page').desk.syncNow()");
    Glass.until(page, "() => (({ unsent, photos, state }) => unsent === 0 && photos === 0 && state === 'sent')"
        + "(document.querySelector('feed-page').desk.status)", null);

    Page second = glass.signedIn("light", 1280, 800);
    second.locator("feeding-row").first().locator("photo-strip button").click();
    assertThat(second.locator("photo-strip dialog img")).isVisible();
    Glass.until(second, "() => document.querySelector('photo-strip dialog img').naturalWidth === 1600", null);
    Glass.isFreeOfFaults(second, "photo", "light", 1280);
    assertThat(arrived(second)).hasSizeGreaterThan(1000).doesNotContain("53.0N", "Exif");

    second.locator("photo-strip dialog button", new Page.LocatorOptions().setHasText("Take this photo away")).click();
    assertThat(second.locator("feeding-row").first().locator("photo-strip")).hasCount(0);
    second.locator("undo-toast button.undo").click();
    assertThat(second.locator("feeding-row").first().locator("photo-strip img")).isVisible();
  }

  @Test
  void a_photo_erased_without_a_server_goes_from_it_and_from_a_second_phone_once_there_is_one_and_stays_gone() throws Exception {
    Page page = glass.signedIn();
    correctOneJustRecorded(page);
    page.locator("feeding-edit photo-picker input").setInputFiles(photo());
    page.locator("feeding-edit photo-picker img").waitFor();
    page.locator("feeding-edit button.firm").click();
    assertThat(arrived(page)).hasSizeGreaterThan(1000);
    Page second = glass.signedIn("light", 1280, 800);
    assertThat(second.locator("feeding-row").first().locator("photo-strip img")).isVisible();
    Glass.until(second, HELD, 1);

    glass.killServer();
    page.locator("feeding-row").first().locator("photo-strip button").click();
    page.locator("photo-strip dialog button", new Page.LocatorOptions().setHasText("Erase the picture")).click();
    assertThat(page.locator("photo-strip dialog [role=alert]")).containsText("nobody can bring it back");
    Glass.isFreeOfFaults(page, "photo-erase", "light", 390);
    page.locator("photo-strip dialog button", new Page.LocatorOptions().setHasText("Yes, erase it")).click();
    assertThat(page.locator("feeding-row").first().locator("photo-strip")).hasCount(0);
    Glass.until(page, HELD, 0);

    glass.startServerAgain();
    page.evaluate("document.querySelector('feed-page').desk.syncNow()");
    Glass.until(page, "() => (({ unsent, photos }) => unsent === 0 && photos === 0)(document.querySelector('feed-page').desk.status)", null);
    second.evaluate("document.querySelector('feed-page').desk.syncNow()");
    assertThat(second.locator("feeding-row").first().locator("photo-strip")).hasCount(0);
    Glass.until(second, HELD, 0);
    Phone phone = Phone.signedIn(glass.url(), Glass.NAME, Glass.PASSWORD);
    String tank = phone.tanks().get(0);
    String entry = phone.pullAll(tank).stream().filter(one -> one.path("kind").asText().equals("photo")).findFirst().orElseThrow().path("id").asText();
    assertThat(phone.get("/api/v1/tanks/" + tank + "/photos/" + entry).statusCode()).isEqualTo(404);

    page.navigate(glass.url() + "/#/history/" + entry);
    assertThat(page.locator("history-page")).containsText("picture erased");
  }

  @Test
  void a_photo_that_a_restored_backup_lacks_is_sent_once_more() throws Exception {
    Page page = glass.signedIn();
    correctOneJustRecorded(page);
    page.locator("feeding-edit photo-picker input").setInputFiles(photo());
    page.locator("feeding-edit photo-picker img").waitFor();
    page.locator("feeding-edit button.firm").click();
    assertThat(page.locator("feeding-row").first().locator("photo-strip img")).isVisible();
    String sent = arrived(page);

    glass.killServer();
    try (Connection database = DriverManager.getConnection("jdbc:h2:file:" + glass.server().data().toAbsolutePath().resolve("provender")
        + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE", "provender", ""); Statement statement = database.createStatement()) {
      assertThat(statement.executeUpdate("delete from photo")).isEqualTo(1);
    }
    glass.startServerAgain("-Dprovender.restored=true");
    page.evaluate("document.querySelector('feed-page').desk.syncNow()");
    assertThat(arrived(page)).isEqualTo(sent);
  }

  @Test
  void what_is_no_picture_is_told_and_the_feeding_goes_on() {
    Page page = glass.signedIn();
    page.locator("feed-page .tile").first().click();
    page.locator("feeding-tray summary").click();
    page.locator("tray-extras photo-picker input").setInputFiles(
        new FilePayload("fish.svg", "image/svg+xml", "<svg xmlns='http://www.w3.org/2000/svg'/>".getBytes(StandardCharsets.UTF_8)));
    assertThat(page.getByText("This phone cannot read that as a picture.")).isVisible();
    assertThat(page.locator("feeding-tray button.deed")).isEnabled();
  }

  @Test
  void a_note_a_time_and_a_photo_can_be_put_right_later() {
    Page page = glass.signedIn();
    correctOneJustRecorded(page);
    page.locator("feeding-edit textarea").fill("Half of it sank");
    page.locator("feeding-edit photo-picker input").setInputFiles(photo());
    page.locator("feeding-edit photo-picker img").waitFor();
    page.locator("feeding-edit button.firm").click();
    assertThat(page.locator("feeding-row").first()).containsText("Half of it sank");
    assertThat(page.locator("feeding-row").first().locator("photo-strip img")).isVisible();
  }

  /** At any time of the day, also when nobody has fed yet. */
  private static void correctOneJustRecorded(Page page) {
    Object before = page.evaluate("document.querySelector('feed-page').desk.today.feedings.length");
    page.locator("feed-page .tile").first().click();
    page.locator("feeding-tray button.deed").click();
    Glass.isAnotherOne(page);
    Glass.until(page, "before => document.querySelector('feed-page').desk.today.feedings.length > before", before);
    page.locator("feeding-row button", new Page.LocatorOptions().setHasText("Correct")).first().click();
  }

  /** The picture as the server gives it, as soon as it does. */
  private String arrived(Page page) throws Exception {
    Phone phone = Phone.signedIn(glass.url(), Glass.NAME, Glass.PASSWORD);
    String tank = phone.tanks().get(0);
    String picture = "";
    for (int i = 0; i < 120 && picture.isEmpty(); i++) {
      page.waitForTimeout(500);
      String id = phone.pullAll(tank).stream().filter(entry -> entry.path("kind").asText().equals("photo"))
          .map(entry -> entry.path("id").asText()).findFirst().orElse("none-yet");
      var answer = phone.get("/api/v1/tanks/" + tank + "/photos/" + id);
      picture = answer.statusCode() == 200 ? answer.body() : "";
    }
    assertThat(picture).isNotEmpty();
    return picture;
  }

  /** Larger than is kept, with a place in it. */
  private static FilePayload photo() {
    return new FilePayload("fish.jpg", "image/jpeg", Snapshot.withExif(Snapshot.jpeg(2400, 1200), "a camera 53.0N 8.8E"));
  }
}
