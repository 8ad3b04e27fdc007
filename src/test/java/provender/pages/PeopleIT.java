package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class PeopleIT {
  private final Glass glass = new Glass();

  @AfterEach
  void close() {
    glass.close();
  }

  @Test
  void a_steward_makes_a_keeper_a_guest_and_ends_a_membership_and_their_phones_follow() {
    Page steward = glass.stranger("light", 390, 844);
    glass.enter(steward, "Maren", "demo-lantern-maren");
    Page teo = glass.signedIn();
    steward.navigate(glass.url() + "/#/people");
    Locator card = card(steward, "Teo");
    card.locator("summary").click();
    Glass.isFreeOfFaults(steward, "people-of-a-steward", "light", 390);
    card.locator("select").selectOption("guest");
    card.locator("record-form button").click();
    assertThat(steward.locator("household-people [role=status]")).containsText("Teo is guest now");
    teo.evaluate("document.querySelector('feed-page').desk.syncNow()");
    Glass.until(teo, "() => document.querySelector('feed-page').desk.mayRecord === false", null);

    Locator end = card.locator("button", new Locator.LocatorOptions().setHasText("End membership"));
    end.click();
    card.locator("button", new Locator.LocatorOptions().setHasText("Yes, Teo")).click();
    assertThat(steward.locator("household-people [role=status]")).containsText("does not belong");
    teo.evaluate("document.querySelector('feed-page').desk.syncNow()");
    Glass.until(teo, "() => document.querySelector('feed-page').desk.tanks.length === 0", null);
    assertThat(steward.locator("household-people details").last()).containsText("does not belong to the household any more");
  }

  @Test
  void a_phone_that_was_signed_out_from_afar_goes_on_recording_and_sends_it_when_its_keeper_is_back() {
    Page kept = glass.signedIn();
    Page lost = glass.signedIn();
    kept.navigate(glass.url() + "/#/people");
    kept.locator("own-phones li button").first().click();
    assertThat(kept.locator("own-phones li")).hasCount(1);

    lost.evaluate("document.querySelector('feed-page').desk.syncNow()");
    Glass.until(lost, "() => document.querySelector('feed-page').desk.status.why === 'signIn'", null);
    lost.locator("feed-page .tile").first().click();
    lost.locator("feeding-tray button.deed").click();
    Glass.isAnotherOne(lost);
    Glass.until(lost, "() => document.querySelector('feed-page').desk.status.unsent === 1", null);
    lost.navigate(glass.url() + "/#/sign-in");
    glass.enter(lost);
    Glass.until(lost, "() => document.querySelector('feed-page').desk.status.unsent === 0", null);
  }

  @Test
  void who_forgot_their_password_comes_back_by_a_link_from_a_steward() {
    Page steward = glass.stranger("light", 390, 844);
    glass.enter(steward, "Maren", "demo-lantern-maren");
    steward.navigate(glass.url() + "/#/people");
    Locator card = card(steward, "Teo");
    card.locator("summary").click();
    card.locator("button", new Locator.LocatorOptions().setHasText("Link for a new password")).click();
    String link = steward.locator("household-people output.link").textContent();
    assertThat(link).contains("/#/reset/");

    Page teo = glass.stranger("light", 390, 844);
    teo.navigate(link);
    teo.locator("reset-page [name=password]").fill("kelp forests at low tide");
    teo.locator("reset-page button.deed").click();
    teo.locator("feed-page .tile").first().waitFor();
    Page again = glass.stranger("light", 390, 844);
    glass.enter(again, "Teo", "kelp forests at low tide");
  }

  private static Locator card(Page page, String name) {
    return page.locator("member-card", new Page.LocatorOptions().setHasText(name)).first();
  }
}
