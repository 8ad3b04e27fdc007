package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Two keepers at one tank within ten minutes. */
class SameFeedingIT {
  private final Glass glass = new Glass();

  @AfterEach
  void close() {
    glass.close();
  }

  private static void tap(Page page) {
    page.locator("feed-page .tile").first().click();
    page.locator("feeding-tray button.deed").click();
  }

  private static int feedings(Page page) {
    return ((Number) page.evaluate("document.querySelector('feed-page').desk.today.feedings.length")).intValue();
  }

  private Page of(String name) {
    Page page = glass.stranger("light", 390, 844);
    glass.enter(page, name, "demo-lantern-" + name.toLowerCase(java.util.Locale.ROOT));
    return page;
  }

  @Test
  void what_another_just_recorded_is_asked_about_before_it_is_recorded_again() {
    Page ilka = of("Ilka");
    tap(ilka);
    Glass.isAnotherOne(ilka);
    Glass.until(ilka, "() => document.querySelector('feed-page').desk.status.unsent === 0", null);
    Page teo = of("Teo");
    Glass.until(teo, "() => document.querySelector('feed-page').desk.today.lastFeeding?.by === 'ilka'", null);
    int before = feedings(teo);

    tap(teo);
    teo.getByText("Yes, the same: leave theirs").click();
    assertThat(teo.locator("same-feeding section")).hasCount(0);
    org.assertj.core.api.Assertions.assertThat(feedings(teo)).isEqualTo(before);

    tap(teo);
    teo.getByText("No, another one: record it").click();
    Glass.until(teo, "before => document.querySelector('feed-page').desk.today.feedings.length === before + 1", before);
    assertThat(teo.locator("same-feeding section")).hasCount(0);
  }

  @Test
  void the_question_goes_when_the_tray_is_changed_and_does_not_come_back_over_what_was_recorded() {
    Page ilka = of("Ilka");
    tap(ilka);
    Glass.until(ilka, "() => document.querySelector('feed-page').desk.status.unsent === 0", null);
    Page teo = of("Teo");
    Glass.until(teo, "() => document.querySelector('feed-page').desk.today.lastFeeding?.by === 'ilka'", null);
    int before = feedings(teo);

    tap(teo);
    teo.locator("same-feeding section").waitFor();
    teo.locator("feeding-tray summary").click();
    teo.locator("tray-extras select[name=when]").selectOption("then");
    assertThat(teo.locator("same-feeding section")).hasCount(0);
    teo.locator("feeding-tray button.deed").click();
    Glass.until(teo, "before => document.querySelector('feed-page').desk.today.feedings.length === before + 1", before);
    assertThat(teo.locator("same-feeding section")).hasCount(0);
  }

  @Test
  void two_recorded_without_a_signal_are_asked_about_when_they_meet_and_once() {
    Page teo = of("Teo");
    Page ilka = of("Ilka");
    teo.context().setOffline(true);
    tap(teo);
    Glass.isAnotherOne(teo);
    tap(ilka);
    Glass.isAnotherOne(ilka);
    Glass.until(ilka, "() => document.querySelector('feed-page').desk.status.unsent === 0", null);
    int alone = feedings(teo);

    teo.context().setOffline(false);
    Glass.until(teo, "() => { document.querySelector('feed-page').desk.syncNow(); return document.querySelector('same-feeding section') !== null; }", null);
    teo.getByText("One: take mine back").click();
    Glass.until(teo, "alone => document.querySelector('feed-page').desk.today.feedings.length === alone", alone);
    Glass.until(teo, "() => document.querySelector('same-feeding section') === null", null);
  }

  /** The regular look is taken after fifteen seconds at the earliest. */
  @Test
  void what_another_records_is_seen_long_before_the_regular_look() {
    Page teo = of("Teo");
    Page ilka = of("Ilka");
    Glass.until(teo, "() => document.querySelector('feed-page').desk.status.lastContact !== null", null);
    teo.waitForTimeout(1500);
    int before = feedings(teo);
    tap(ilka);
    Glass.isAnotherOne(ilka);
    Glass.until(ilka, "() => document.querySelector('feed-page').desk.status.unsent === 0", null);
    long sent = System.nanoTime();
    Glass.until(teo, "before => document.querySelector('feed-page').desk.today.feedings.length === before + 1", before);
    org.assertj.core.api.Assertions.assertThat(java.time.Duration.ofNanos(System.nanoTime() - sent)).isLessThan(java.time.Duration.ofSeconds(12));
  }

  @Test
  void a_past_feeding_is_given_again_with_one_tap_and_says_who_got_it() {
    Page teo = of("Teo");
    teo.locator("feeding-list details summary").click();
    int before = feedings(teo);
    teo.locator("feeding-row").last().getByText("Again").click();
    Glass.until(teo, "before => document.querySelector('feed-page').desk.today.feedings.length === before + 1", before);
    teo.locator("feeding-row").first().getByText("Who got it?").click();
    assertThat(teo.locator("feeding-row .shares li").first()).isVisible();
  }
}
