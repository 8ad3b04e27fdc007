package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What was tapped in wrongly is put right afterwards, with no network. */
class CorrectingIT {
  private static final String NEWEST = "document.querySelector('feed-page').desk.today.feedings[0]";

  private final Glass glass = new Glass();

  @AfterEach
  void close() {
    glass.close();
  }

  @Test
  void grams_count_while_they_are_typed_and_half_a_decimal_stays_as_it_is() {
    Page page = glass.signedIn("light", 390, 844);
    page.locator("feed-page .tile").first().click();
    Locator grams = page.locator("measure-steps .in-grams input");
    grams.pressSequentially("2.");
    assertThat(grams).hasValue("2.");
    grams.pressSequentially("5");
    assertThat(page.locator("feeding-tray button.deed")).containsText("2.5 g".replace(' ', '\u202f'));
    assertThat(grams).hasValue("2.5");
  }

  @Test
  void the_amount_and_what_was_left_are_corrected_in_the_measure_they_were_given_in_and_bad_ones_are_named() {
    Page page = glass.signedIn("light", 390, 844);
    Glass.settled(page);
    page.context().setOffline(true);
    page.locator("feed-page .tile").first().click();
    page.locator("feeding-tray button.deed").click();
    Glass.isAnotherOne(page);
    double one = ((Number) page.evaluate(NEWEST + ".items[0].grams / " + NEWEST + ".items[0].count")).doubleValue();

    page.locator("feeding-row button", new Page.LocatorOptions().setHasText("Correct")).first().click();
    Locator form = page.locator("feeding-edit");
    form.locator("input[name=item-0]").fill("none");
    form.locator("button.firm").click();
    assertThat(form.locator(".fault")).hasText("an amount above nothing, such as 2 or 2.5");
    assertThat(form.locator("input[name=item-0]")).isFocused();
    Glass.isFreeOfFaults(page, "correcting", "light", 390);
    form.locator("input[name=item-0]").fill("2,5");
    form.locator("input[name=leftover]").fill("1.5");
    form.locator("button.firm").click();

    Glass.until(page, "one => Math.abs(" + NEWEST + ".items[0].grams - 2.5 * one) < 1e-9 && " + NEWEST + ".items[0].count === 2.5 && "
        + NEWEST + ".leftoverGrams === 1.5", one);
    assertThat(page.locator("feeding-row").first()).containsText("1.5 g left over");
    assertThat(page.locator("feeding-row").first()).containsText("corrected");
  }

  @Test
  void what_was_fed_yesterday_and_forgotten_is_recorded_with_its_own_day_and_time_and_none_that_is_yet_to_come() {
    Page page = glass.signedIn("light", 390, 844);
    Glass.settled(page);
    page.context().setOffline(true);
    page.locator("feed-page .tile").first().click();
    page.locator("feeding-tray summary").click();
    page.locator("tray-extras select[name=when]").selectOption("then");
    Locator then = page.locator("tray-extras input[name=then]");
    Glass.isFreeOfFaults(page, "another-day", "light", 390);
    then.fill("2999-01-01T12:00");
    then.blur();
    assertThat(then).hasValue(localTime(page, "glance.day", "glance.minute"));

    then.fill(localTime(page, "glance.day - 1", "1110"));
    then.blur();
    page.locator("feeding-tray button.deed").click();
    assertThat(page.locator("feed-page undo-toast")).containsText("Saved on this phone for yesterday, ");
    Glass.until(page, "({ day }) => document.querySelector('feed-page').desk.today.feedings.some((one) => one.day === day - 1 && one.minute === 1110)",
        page.evaluate("({ day: document.querySelector('feed-page').desk.glance.day })"));
  }

  @Test
  void no_more_is_left_over_than_went_in() {
    Page page = glass.signedIn("light", 390, 844);
    page.locator("feed-page .tile").first().click();
    page.locator("feeding-tray summary").click();
    page.locator("tray-extras input[inputmode=decimal]").fill("5000");
    page.locator("feeding-tray button.deed").click();
    assertThat(page.locator("feed-page undo-toast")).containsText("no more can be left over than the ");
    assertThat(page.locator("feeding-tray button.deed")).isVisible();
  }

  /** As a field for day and time has it, by the clock where the tank stands. */
  private static String localTime(Page page, String day, String minute) {
    return (String) page.evaluate("() => { const { glance } = document.querySelector('feed-page').desk; return new Date((" + day + ") * 864e5 + (" + minute
        + ") * 6e4).toISOString().slice(0, 16); }");
  }
}
