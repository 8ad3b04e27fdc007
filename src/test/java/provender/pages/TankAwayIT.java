package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class TankAwayIT {
  private final Glass glass = new Glass();

  @AfterEach
  void close() {
    glass.close();
  }

  @Test
  void the_demo_tank_goes_with_one_tap_comes_back_by_undo_and_from_where_it_was_put() {
    Page page = glass.stranger("light", 390, 844);
    glass.enter(page, "Maren", "demo-lantern-maren");
    page.navigate(glass.url() + "/#/tanks");
    Locator tank = page.locator("tank-list .card button.primary, tank-list .card button[aria-current=true]");
    page.getByText("Remove the demo tank").click();
    assertThat(tank).hasCount(0);
    page.locator("undo-toast button.undo").click();
    assertThat(tank).hasCount(1);

    page.getByText("Remove the demo tank").click();
    assertThat(tank).hasCount(0);
    page.reload();
    page.getByText("Bring back").click();
    assertThat(tank).hasCount(1);
    tank.click();
    assertThat(page.locator("feed-page .tile").first()).isVisible();
    Glass.until(page, "() => document.querySelector('feed-page').desk.today.feedings.length > 0", null);
  }
}
