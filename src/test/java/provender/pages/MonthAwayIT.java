package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Page;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import provender.Phone;

/** A phone was away for thirty days, and its keeper is not let in as before; what the server says of it is in {@code MonthAwayTest}. */
class MonthAwayIT {
  private static final int UNSENT = 400;
  private static final String DESK = "document.querySelector('main > *').desk";
  private static final String TAP_FOR_A_MONTH = "async unsent => { for (let i = 0; i < unsent; i++) await " + DESK + ".record('feeding',"
      + " { items: [{ food: 'mysis_frozen', grams: 1.125 }] }, { happenedAt: new Date(Date.now() - (unsent - i) * 108 * 60_000)"
      + ".toISOString().slice(0, 19) + '+00:00' }); }";

  private final Glass glass = new Glass();

  @AfterEach
  void close() {
    glass.close();
  }

  @Test
  void with_the_session_revoked_all_waits_on_the_phone_until_its_keeper_signs_in_and_then_all_goes_out_once() throws Exception {
    Page page = away();
    Phone other = Phone.signedIn(glass.url(), Glass.NAME, Glass.PASSWORD);
    assertThat(other.delete("/api/v1/session/devices").statusCode()).isEqualTo(204);
    back(page, "signIn");
    assertThat(arrived()).isEmpty();

    page.navigate(glass.url() + "/#/sign-in");
    glass.enter(page);
    allArriveOnce(page);
  }

  @Test
  void with_its_keeper_gone_all_stays_aside_on_the_phone_until_they_are_let_in_again() throws Exception {
    Page page = away();
    Phone steward = Phone.signedIn(glass.url(), "Maren", "demo-lantern-maren");
    assertThat(steward.delete("/api/v1/households/quernhaven/people/teo").statusCode()).isEqualTo(204);
    back(page, "notAllowed");
    assertThat(arrived()).isEmpty();
    page.navigate(glass.url() + "/#/records");
    assertThat(page.locator("records-page")).containsText("400");

    String answer = steward.post("/api/v1/households/quernhaven/invitations", "{\"role\":\"keeper\"}").body();
    page.navigate(glass.url() + "/#/join/" + answer.replaceAll(".*\"code\":\"([^\"]+)\".*", "$1"));
    page.locator("join-page button.deed").click();
    allArriveOnce(page);
  }

  private Page away() {
    Page page = glass.signedIn();
    Glass.settled(page);
    page.context().setOffline(true);
    page.evaluate(TAP_FOR_A_MONTH, UNSENT);
    Glass.until(page, "unsent => " + DESK + ".status.unsent === unsent", UNSENT);
    return page;
  }

  private static void back(Page page, String why) {
    page.context().setOffline(false);
    Glass.until(page, "why => { const desk = " + DESK + "; desk.syncNow(); return desk.status.why === why && desk.status.unsent === " + UNSENT + "; }", why);
  }

  private void allArriveOnce(Page page) throws Exception {
    Glass.until(page, "() => { const desk = " + DESK + "; desk.syncNow(); return desk.status.unsent === 0 && desk.status.refused === 0; }", null);
    assertThat(arrived()).hasSize(UNSENT).doesNotHaveDuplicates();
  }

  /** The ids of the month's feedings that the server holds, all of them tapped by Teo. */
  private List<String> arrived() throws Exception {
    Phone reader = Phone.signedIn(glass.url(), "Ilka", "demo-lantern-ilka");
    List<JsonNode> feedings = reader.pullAll(reader.tanks().get(0)).stream()
        .filter(entry -> entry.path("body").path("items").path(0).path("grams").asDouble() == 1.125).toList();
    assertThat(feedings).allMatch(entry -> entry.path("by").asText().equals("teo"));
    return feedings.stream().map(entry -> entry.path("id").asText()).toList();
  }
}
