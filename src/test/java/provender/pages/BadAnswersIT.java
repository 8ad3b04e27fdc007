package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Whatever answers a push: what was tapped stays on the phone, whole and once, and goes out when the way is free. */
class BadAnswersIT {
  private static final String PUSHES = "**/entries";

  private final Glass glass = new Glass();
  private Page page;
  private int before;

  @BeforeEach
  void a_feeding_that_waits() {
    page = glass.signedIn();
    before = feedings();
  }

  @AfterEach
  void close() {
    glass.close();
  }

  private int feedings() {
    return ((Number) page.evaluate("document.querySelector('feed-page').desk.today.feedings.length")).intValue();
  }

  private void tappedAgainst(Consumer<Route> answer, String state, String why) {
    page.context().route(PUSHES, route -> {
      if (route.request().method().equals("POST")) {
        answer.accept(route);
      } else {
        route.resume();
      }
    });
    page.locator("feed-page .tile").first().click();
    page.locator("feeding-tray button.deed").click();
    Glass.isAnotherOne(page);
    Glass.until(page, "([state, why]) => { const { status } = document.querySelector('feed-page').desk;"
        + " return status.state === state && (status.why ?? '') === why && status.unsent === 1; }", java.util.List.of(state, why));
    Glass.until(page, "before => document.querySelector('feed-page').desk.today.feedings.length === before + 1", before);
  }

  private void goesOutOnceTheWayIsFree() {
    page.context().unroute(PUSHES);
    Glass.until(page, "() => { const { desk } = document.querySelector('feed-page'); desk.syncNow(); return desk.status.unsent === 0 && desk.status.state === 'sent'; }", null);
    Glass.until(page, "before => document.querySelector('feed-page').desk.today.feedings.length === before + 1", before);
  }

  private static void says(Route route, int status, String type, String body) {
    route.fulfill(new Route.FulfillOptions().setStatus(status).setContentType(type).setBody(body));
  }

  @Test
  void a_right_that_was_lost_keeps_it_aside_and_says_so_instead_of_asking_to_sign_in() {
    tappedAgainst(route -> says(route, 403, "application/problem+json", "{\"title\":\"you may read here\",\"status\":403}"), "needsYou", "notAllowed");
    page.locator("sync-mark summary").click();
    assertThat(page.getByText("stays on this phone. Nothing is thrown away")).isVisible();
    assertThat(page.locator("sync-mark").getByText("Sign in")).hasCount(0);
    goesOutOnceTheWayIsFree();
  }

  @Test
  void a_session_that_ran_out_asks_to_sign_in_and_keeps_everything() {
    tappedAgainst(route -> says(route, 401, "application/problem+json", "{\"title\":\"sign in first\",\"status\":401}"), "needsYou", "signIn");
    goesOutOnceTheWayIsFree();
  }

  @Test
  void a_station_network_that_answers_everything_with_its_own_page_moves_nothing() {
    tappedAgainst(route -> says(route, 200, "text/html", "<html>Welcome to the station</html>"), "onPhone", "offline");
    goesOutOnceTheWayIsFree();
  }

  @Test
  void a_server_that_fails_is_tried_again() {
    tappedAgainst(route -> says(route, 503, "application/problem+json", "{\"title\":\"later\",\"status\":503}"), "onPhone", "offline");
    goesOutOnceTheWayIsFree();
  }

  @Test
  void an_answer_lost_on_its_way_back_doubles_nothing() {
    tappedAgainst(route -> {
      route.fetch();
      route.abort();
    }, "onPhone", "offline");
    goesOutOnceTheWayIsFree();
  }

  @Test
  void an_answer_that_names_nothing_that_was_sent_leaves_it_waiting() {
    tappedAgainst(route -> says(route, 200, "application/json", "{\"answers\":[],\"head\":0,\"epoch\":\"x\",\"serverTime\":\"2026-01-01T00:00:00Z\"}"), "onPhone", "");
    goesOutOnceTheWayIsFree();
  }
}
