package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What a keeper meets, done with one thumb and counted; the pictures are those of {@code src/test/walk}. */
class FiveSituationsIT {
  private static final String REFUSED_FOR_TWO_DAYS = """
      async () => {
        const { desk } = document.querySelector("feed-page");
        for (const day of [2, 1]) await desk.record("observation", { fish: "majestic", saw: "refused" },
          { happenedAt: new Date(Date.now() - day * 86_400_000).toISOString().slice(0, 19) + "+00:00" });
        return desk.today.fish.find(({ id }) => id === "majestic").name;
      }""";

  private final Glass glass = new Glass();

  @AfterEach
  void close() {
    glass.close();
  }

  @Test
  void a_hurried_evening_feeding_takes_two_taps_with_the_server_gone() {
    Page page = glass.signedIn();
    Glass.settled(page);
    glass.killServer();
    Thumb thumb = new Thumb(page, "hurried");
    thumb.look("tiles");
    thumb.tap("feed-page .tile");
    thumb.look("amount");
    thumb.tap("feeding-tray button.deed");
    Glass.isAnotherOne(page);
    assertThat(page.locator("undo-toast button.undo")).isVisible();
    thumb.look("saved");
    assertThat(thumb.did()).isEqualTo("2 taps");
  }

  @Test
  void a_stand_in_feeds_after_five_taps_and_the_two_fields_that_say_who_they_are() {
    Page steward = glass.stranger("light", 390, 844);
    glass.enter(steward, "Maren", "demo-lantern-maren");
    Thumb asking = new Thumb(steward, "stand-in");
    asking.tap("nav-bar a[href='#/more']");
    asking.tap("more-page a[href='#/tanks']");
    asking.tap(steward.locator("household-tools summary").nth(1));
    asking.tap(steward.locator("household-tools record-form button.deed").nth(1));
    String link = steward.locator("output.link").textContent();
    steward.locator("household-tools qr-code").scrollIntoViewIfNeeded();
    asking.look("asked");
    assertThat(asking.did()).isEqualTo("4 taps");

    Page page = glass.stranger("light", 390, 844);
    page.navigate(link);
    Thumb thumb = new Thumb(page, "stand-in");
    thumb.type("join-page [name=name]", "Weekend help");
    thumb.type("join-page [name=password]", "a lamp in the pump room");
    thumb.look("joins");
    thumb.tap("join-page button.deed");
    page.locator("feed-page .tile").first().waitFor();
    thumb.tap("nav-bar a[href='#/today']");
    Glass.reckoned(page);
    thumb.look("today");
    thumb.tap("nav-bar a[href='#/feed']");
    thumb.tap("feed-page .tile");
    thumb.tap("feeding-tray button.deed");
    Glass.isAnotherOne(page);
    assertThat(page.locator("undo-toast")).containsText("Saved");
    assertThat(thumb.did()).isEqualTo("5 taps, 2 fields");
  }

  @Test
  void a_fish_that_refused_for_two_days_is_looked_at_and_its_third_day_written_down_in_three_taps() {
    Page page = glass.signedIn();
    String name = (String) page.evaluate(REFUSED_FOR_TWO_DAYS);
    Thumb thumb = new Thumb(page, "not-eating");
    thumb.tap("nav-bar a[href='#/fish']");
    page.locator("fish-row").first().waitFor();
    thumb.look("fish");
    thumb.tap("fish-row button", name);
    assertThat(page.locator("fish-story")).containsText("refused some food");
    thumb.look("findings");
    thumb.tap("fish-detail button.firm", "Refused");
    assertThat(page.locator("undo-toast")).containsText("saved on this phone");
    assertThat(page.locator("fish-story")).containsText("today");
    assertThat(page.locator("fish-detail")).containsText("Refuses its food");
    assertThat(thumb.did()).isEqualTo("3 taps");
  }

  @Test
  void a_monthly_measuring_takes_four_taps_and_the_length() {
    Page page = glass.signedIn();
    Thumb thumb = new Thumb(page, "measuring");
    thumb.tap("nav-bar a[href='#/fish']");
    thumb.tap("fish-row button");
    thumb.tap("fish-detail a[href*='setup/size']");
    thumb.type("record-form input[inputmode=decimal]", "31,5");
    page.locator("glass-ruler input").first().waitFor();
    thumb.look("length");
    thumb.tap("record-form button.deed");
    assertThat(page.locator("undo-toast")).containsText("Saved");
    thumb.look("counts");
    assertThat(thumb.did()).isEqualTo("4 taps, 1 field");
  }

  @Test
  void a_new_tank_is_fed_after_eleven_taps_and_four_fields() {
    Page page = glass.stranger("light", 390, 844);
    glass.enter(page, "Maren", "demo-lantern-maren");
    Thumb thumb = new Thumb(page, "new-tank");
    thumb.tap("nav-bar a[href='#/more']");
    thumb.tap("more-page a[href='#/tanks']");
    thumb.tap("household-tools summary");
    thumb.type("household-tools [name=name]", "Lobby cube");
    thumb.tap("household-tools record-form button.deed");
    page.locator("setup-page .next a").waitFor();
    thumb.look("begins");
    thumb.tap("setup-page .next a");
    thumb.type("record-form [name=volumeLitres]", "900");
    thumb.type("record-form [name=temperatureC]", "25");
    thumb.tap("record-form button.deed");
    thumb.tap("setup-page .next a");
    thumb.type("fish-adder textarea", "2 yellow tang 12 cm\n6 green chromis 5 cm\n1 copperband butterflyfish 14 cm");
    thumb.look("fish");
    thumb.tap("fish-adder button.deed");
    page.waitForTimeout(500);
    thumb.tap("setup-page .next a");
    thumb.tap("feed-page .tile");
    thumb.look("feeds");
    thumb.tap("feeding-tray button.deed");
    assertThat(page.locator("undo-toast")).containsText("Saved");
    assertThat(thumb.did()).isEqualTo("11 taps, 4 fields");
  }
}
