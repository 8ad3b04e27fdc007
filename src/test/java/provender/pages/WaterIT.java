package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The water as a steward looks after it, with no server to be had. */
class WaterIT {
  private final Glass glass = new Glass();
  private Page page;

  @BeforeEach
  void at_the_tank_without_a_signal() {
    page = glass.signedInAsWenna();
    Glass.settled(page);
    glass.killServer();
    page.navigate(glass.url() + "/#/water");
    page.locator("level-chart canvas").first().waitFor();
  }

  @AfterEach
  void close() {
    glass.close();
  }

  private double nitrate() {
    return ((Number) page.evaluate("async () => (await document.querySelector('water-page').desk.opened.water()).tests[0].nitrateMgL")).doubleValue();
  }

  @Test
  void a_test_is_typed_in_the_units_of_the_kit_and_can_be_taken_back() {
    page.getByText("Water test").click();
    page.locator("[name=phosphate]").fill("0,12");
    page.locator("[name=phosphateUnit]").selectOption("mg/L P");
    page.locator("[name=alkalinity]").fill("3");
    page.locator("[name=alkalinityUnit]").selectOption("meq/L");
    page.locator("record-form .deed").click();

    Glass.until(page, "async () => { const { tests: [test] } = await document.querySelector('water-page').desk.opened.water();"
        + " return Math.abs(test.phosphateMgL - 0.12 * 3.0661) < 1e-4 && Math.abs(test.alkalinityDkh - 3 * 50.043 / 17.85) < 1e-3; }", null);
    page.locator("undo-toast button.undo").click();
    Glass.until(page, "async () => (await document.querySelector('water-page').desk.opened.water()).tests[0].nitrateMgL === 53", null);
    page.getByText("Water test").click();
    assertThat(page.locator("[name=phosphateUnit]")).hasValue("mg/L P");
  }

  @Test
  void a_test_as_far_off_as_the_two_units_lie_apart_is_asked_about() {
    page.getByText("Water test").click();
    page.locator("[name=nitrate]").fill("12");
    page.locator("record-form .deed").click();
    assertThat(page.getByText("Did you mean mg/L N?")).isVisible();
    page.getByText("as typed").click();
    Glass.until(page, "async () => (await document.querySelector('water-page').desk.opened.water()).tests[0].nitrateMgL === 12", null);

    page.getByText("Water test").click();
    page.locator("[name=nitrate]").fill("2.7");
    page.locator("record-form .deed").click();
    assertThat(page.getByText("Did you mean mg/L N?")).isVisible();
    page.locator("[role=alertdialog] button").first().click();
    page.locator("level-chart").first().waitFor();
    assertThat(nitrate()).isBetween(11.9, 12.0);
  }

  @Test
  void an_exchange_is_noted_and_shows() {
    page.getByText("Exchange", new Page.GetByTextOptions().setExact(true)).click();
    page.locator("[name=litres]").fill("300");
    page.locator("record-form .deed").click();
    assertThat(page.getByText("Last exchange: 300")).isVisible();
  }

  @Test
  void trying_what_would_happen_keeps_nothing() {
    int before = entries();
    String asItIs = afterAMonthOtherThan("");
    page.locator("#what-if-fed").selectOption("0.5");
    page.locator("#what-if-fraction").selectOption("0.2");
    page.waitForTimeout(500);
    String tried = afterAMonthOtherThan(asItIs);
    assertThat(Double.parseDouble(tried)).isLessThan(Double.parseDouble(asItIs));
    page.locator("#what-if-more").selectOption("400");
    assertThat(Double.parseDouble(afterAMonthOtherThan(tried))).isGreaterThan(Double.parseDouble(tried));
    assertThat(entries()).isEqualTo(before);
  }

  @Test
  void wanted_levels_and_media_are_kept() {
    page.getByText("What is wanted").click();
    page.locator("[name=wantedPhosphateMgL]").fill("0.9");
    page.locator("record-form .deed").click();
    Glass.until(page, "() => !document.querySelector('water-page').desk.today.findings.some(({ rule }) => rule === 'phosphate-rises')", null);
    page.getByText("Media or carbon").click();
    page.locator("record-form .deed").click();
    Glass.until(page, "async () => (await document.querySelector('water-page').desk.opened.water()).dosings === 1", null);
  }

  /** The engine answers a moment later; until then what it said before stands. */
  private String afterAMonthOtherThan(String before) {
    Glass.until(page, "before => document.querySelector('what-if tbody tr td').textContent !== before", before);
    return page.locator("what-if tbody tr").first().locator("td").first().textContent();
  }

  private int entries() {
    return ((Number) page.evaluate("document.querySelector('water-page').desk.status.unsent")).intValue();
  }
}
