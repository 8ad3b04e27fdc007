package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Two phones change a running feeder without seeing each other. */
class ConflictIT {
  private final Glass glass = new Glass();

  @AfterEach
  void close() {
    glass.close();
  }

  private static void turn(Page page, String ask, String yes) {
    Locator north = page.locator("feeder-card").filter(new Locator.FilterOptions().setHasText("North feeder"));
    north.getByText(ask).click();
    north.getByText(yes).click();
  }

  private static void runs(Page page, boolean running) {
    Glass.until(page, "running => document.querySelector('#main > *').desk.today.feeders.find(({ key }) => key === 'north').running === running"
        + " && document.querySelector('#main > *').desk.status.unsent === 0", running);
  }

  @Test
  void a_merge_never_turns_a_feeder_and_a_person_decides_on_either_phone() {
    Page one = glass.signedInAsWenna();
    Page two = glass.signedInAsWenna();
    one.navigate(glass.url() + "/#/feeders");
    two.navigate(glass.url() + "/#/feeders");
    Glass.settled(one);

    one.context().setOffline(true);
    turn(one, "Stop it", "Yes, stop it");
    turn(two, "Stop it", "Yes, stop it");
    runs(two, false);
    turn(two, "Start it", "Yes, start it");
    runs(two, true);

    one.context().setOffline(false);
    one.navigate(glass.url() + "/#/today");
    Glass.until(one, "() => { document.querySelector('#main > *').desk.syncNow(); return document.querySelector('#main > *').desk.today.conflicts.length === 1; }", null);
    runs(one, true);
    assertThat(one.locator("conflict-list").getByText("and that stands")).isVisible();
    one.getByText("Change to stopped").click();
    runs(one, false);
    assertThat(one.locator("conflict-list article")).hasCount(0);
    Glass.until(two, "() => { document.querySelector('#main > *').desk.syncNow(); return true; }", null);
    Glass.until(two, "() => { const { desk } = document.querySelector('#main > *'); desk.syncNow();"
        + " return desk.today.conflicts.length === 0 && !desk.today.feeders.find(({ key }) => key === 'north').running; }", null);
  }
}
