package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Auto-feeders as a steward uses them at the tank, with no server to be had. */
class FeederIT {
  private final Glass glass = new Glass();
  private Page page;

  @BeforeEach
  void at_the_tank_without_a_signal() {
    page = glass.signedInAsWenna();
    Glass.settled(page);
    glass.killServer();
    page.navigate(glass.url() + "/#/feeders");
    card("West feeder").waitFor();
  }

  @AfterEach
  void close() {
    glass.close();
  }

  private Locator card(String name) {
    return page.locator("feeder-card").filter(new Locator.FilterOptions().setHasText(name));
  }

  private static String today(String js) {
    return "() => { const today = document.querySelector('feeder-page').desk.today; return " + js + "; }";
  }

  @Test
  void ten_weighings_tapped_in_make_an_unweighed_feeder_count() {
    assertThat(card("West feeder").getByText("never weighed")).isVisible();
    card("West feeder").getByText("Weigh drops").click();
    for (String grams : new String[] {"0,052", "0.047", "0.055", "0.049", "0.051", "0.046", "0.053", "0.050", "0.048", "0.054"}) {
      page.locator("drop-scale [name=weight]").fill(grams);
      page.keyboard().press("Enter");
    }
    assertThat(page.locator("drop-scale li")).hasCount(10);
    assertThat(page.getByText("That holds the mean to 5 %.")).isVisible();
    page.locator("drop-scale .deed").click();

    Glass.until(page, today("Math.abs(today.feeders.find(({ key }) => key === 'west').drops?.gramsPerDrop.value - 0.0505) < 1e-9"
        + " && !today.findings.some(({ rule }) => rule === 'feeder-unweighed')"), null);
    page.locator("undo-toast button.undo").click();
    Glass.until(page, today("today.findings.some(({ rule }) => rule === 'feeder-unweighed')"), null);
  }

  @Test
  void a_weight_that_cannot_be_one_is_asked_for_again_and_weights_a_hundredfold_apart_are_doubted() {
    card("West feeder").getByText("Weigh drops").click();
    page.locator("drop-scale [name=weight]").fill("0");
    page.keyboard().press("Enter");
    assertThat(page.getByText("A weight above 0 g.")).isVisible();
    for (String grams : new String[] {"0.05", "50"}) {
      page.locator("drop-scale [name=weight]").fill(grams);
      page.keyboard().press("Enter");
    }
    assertThat(page.getByText("a hundredfold apart")).isVisible();
    assertThat(page.locator("drop-scale .deed")).isDisabled();
  }

  @Test
  void a_fill_ends_the_word_of_an_empty_hopper() {
    card("South feeder").getByText("Fill", new Locator.GetByTextOptions().setExact(true)).click();
    page.locator("[name=addedGrams]").fill("20");
    page.locator("record-form .deed").click();
    Glass.until(page, today("!today.findings.some(({ rule }) => rule === 'hopper-low')"), null);
  }

  @Test
  void proposed_portions_change_nothing_until_somebody_has_said_so_twice() {
    String drops = "JSON.stringify(today.feeders.map(({ times }) => times.map(({ drops }) => drops)))";
    Object before = page.evaluate(today(drops));
    page.getByText("Use these portions").click();
    assertThat(page.getByText("Yes, the machines are set")).isVisible();
    org.assertj.core.api.Assertions.assertThat(page.evaluate(today(drops))).isEqualTo(before);
    page.getByText("Yes, the machines are set").click();
    Glass.until(page, today("today.proposal.feeders.every(({ feeder, times }) => JSON.stringify(times) === "
        + "JSON.stringify(today.feeders.find(({ key }) => key === feeder).times))"), null);
    assertThat(page.getByText("The feeders are set like this already.")).isVisible();
  }

  @Test
  void a_new_feeder_stands_still_until_it_is_started_on_purpose() {
    page.getByText("Add an auto-feeder").click();
    page.locator("[name=name]").fill("Reserve");
    page.locator("[name=times]").fill("08:30 2\nsoon 3");
    page.locator("record-form .deed").click();
    assertThat(page.getByText("Not understood: soon 3.")).isVisible();
    page.locator("[name=times]").fill("08:30 2\n17:00 1");
    page.locator("record-form .deed").click();
    assertThat(card("Reserve").getByText("standing still")).isVisible();
    card("Reserve").getByText("Start it").click();
    card("Reserve").getByText("Leave it as it is").click();
    assertThat(card("Reserve").getByText("standing still")).isVisible();
    card("Reserve").getByText("Start it").click();
    card("Reserve").getByText("Yes, start it").click();
    Glass.until(page, today("today.feeders.find(({ name }) => name === 'Reserve').running === true"), null);
  }

  @Test
  void a_jam_says_what_was_found_and_why() {
    assertThat(card("North feeder").getByText("Look for a jam")).isVisible();
    card("North feeder").locator(".why").click();
    assertThat(page.locator("why-dialog").getByText("k m ± t s √(k + k²/n)")).isVisible();
  }
}
