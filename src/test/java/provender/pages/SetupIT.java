package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class SetupIT {
  private final Glass glass = new Glass();

  @AfterEach
  void close() {
    glass.close();
  }

  @Test
  void fish_come_in_from_a_pasted_list_without_a_server_and_can_be_taken_back() {
    Page page = glass.signedIn();
    Glass.settled(page);
    glass.killServer();
    page.navigate(glass.url() + "/#/setup/add-fish");
    int before = fish(page);

    page.locator("fish-adder textarea").fill("3 yellow tang 12 cm\n2 fish nobody knows");
    assertThat(page.getByText("not in the list; add it by itself")).isVisible();
    page.locator("fish-adder button.deed").click();

    Glass.until(page, "before => document.querySelector('setup-page').desk.today.fish.length === before + 1", before);
    page.locator("undo-toast button.undo").click();
    Glass.until(page, "before => document.querySelector('setup-page').desk.today.fish.length === before", before);
  }

  @Test
  void a_measure_that_was_weighed_is_divided_by_how_many_were_on_the_scale() {
    Page page = glass.signedIn();
    page.navigate(glass.url() + "/#/setup/measure/new");
    page.locator("[name=name]").fill("My scoop");
    page.locator("[name=together]").fill("10");
    page.locator("[name=grams]").fill("18,4");
    page.locator("record-form button.deed").click();

    Glass.until(page, "() => document.querySelector('setup-page').desk.today.measures.some(({ name, grams, basis }) =>"
        + " name === 'My scoop' && Math.abs(grams - 1.84) < 1e-12 && basis === 'weighed')", null);
  }

  @Test
  void a_field_that_is_wrong_says_what_it_takes_and_keeps_what_was_typed() {
    Page page = glass.signedIn();
    page.navigate(glass.url() + "/#/setup/food/new");
    page.locator("[name=name]").fill("Our mash");
    page.locator("[name=waterGrams]").fill("much");
    page.locator("record-form button.deed").click();

    assertThat(page.getByText("Moisture, most takes a number from 0 to 100 %.")).isVisible();
    assertThat(page.getByText("Protein, least is needed.")).isVisible();
    assertThat(page.locator("[name=name]")).hasValue("Our mash");
    assertThat(page.locator("[name=waterGrams]")).isFocused();
  }

  private static int fish(Page page) {
    page.locator("fish-adder").waitFor();
    int count = ((Number) page.evaluate("document.querySelector('setup-page').desk.today.fish.length")).intValue();
    assertThat(count).isPositive();
    return count;
  }
}
