package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Page;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import provender.Phone;
import provender.vectors.Vectors;

class FeedingOfflineIT {
  private final Glass glass = new Glass();

  @AfterEach
  void close() {
    glass.close();
  }

  @Test
  void what_is_tapped_without_a_server_arrives_once_and_a_second_phone_sees_the_same() throws Exception {
    int before = feedings().size();
    Page page = glass.signedIn();
    Glass.settled(page);
    glass.killServer();
    page.reload();
    assertThat(page.locator("feed-page .tile").first()).isVisible();
    Glass.reckoned(page);
    double given = givenKj(page);

    record(page);
    record(page);
    double twice = givenKj(page);
    record(page);
    assertThat(page.getByText("on this phone").first()).isVisible();
    page.locator("undo-toast button.undo").click();
    Glass.until(page, "twice => Math.abs(document.querySelector('feed-page').desk.today.ration.givenKj.value - twice) < 1e-9",
        twice);
    double afterwards = givenKj(page);
    assertThat(afterwards).isGreaterThan(given);

    glass.startServerAgain();
    page.reload();
    Glass.until(page, "() => document.querySelector('feed-page')?.desk.status.unsent === 0 && "
        + "document.querySelector('feed-page').desk.status.state === 'sent'", null);
    List<JsonNode> stored = feedings();
    assertThat(stored).hasSize(before + 3);
    assertThat(stored.stream().map(entry -> entry.path("id").asText()).distinct()).hasSize(before + 3);

    Page second = glass.signedIn();
    Glass.until(second, "wanted => Math.abs(document.querySelector('feed-page')?.desk.today?.ration.givenKj.value - wanted)"
        + " <= 1e-9 * wanted", afterwards);
    assertThat(numbers(second)).isEqualTo(numbers(page));
  }

  @Test
  void what_lies_on_the_tray_stays_there_while_its_keeper_looks_at_another_page() {
    Page page = glass.signedIn();
    page.locator("feed-page .tile").first().click();
    page.locator("feed-page .tile").nth(1).click();
    assertThat(page.locator("feeding-tray button.deed")).isVisible();
    String tray = page.locator("feeding-tray").innerText();
    page.locator("nav-bar a[href='#/today']").click();
    page.locator("today-page ration-panel").waitFor();
    assertThat(page.locator("feed-page")).hasCount(0);
    page.locator("nav-bar a[href='#/feed']").click();
    assertThat(page.locator("feeding-tray button.deed")).isVisible();
    assertThat(page.locator("feeding-tray").innerText()).isEqualTo(tray);
    page.locator("feeding-tray button.deed").click();
    assertThat(page.locator("undo-toast button.undo")).isVisible();
  }

  @Test
  void offering_algae_takes_the_grazers_off_the_findings_without_a_server() {
    Page page = glass.signedIn();
    Glass.settled(page);
    Glass.until(page, "() => document.querySelector('feed-page').desk.today.findings.some(({ rule }) => rule === 'no-algae')", null);
    glass.killServer();
    page.reload();
    page.locator("feed-page .tile").first().waitFor();
    page.evaluate("document.querySelector('feed-page').desk.record('feeding',"
        + " { items: [{ food: 'nori_dried', grams: 60 }] })");
    Glass.until(page, "() => !document.querySelector('feed-page').desk.today.findings.some(({ rule }) => rule === 'no-algae')", null);
    assertThat(rules(page)).doesNotContain("no-algae").contains("no-sponge");
  }

  @Test
  void the_phone_answers_every_vector_as_the_server_does_and_a_changed_one_fails() {
    Page page = glass.signedIn();
    for (Vectors.Vector vector : Vectors.all()) {
      Object answer = page.evaluate("([call, input]) => document.querySelector('feed-page').desk.calc(call, input)",
          List.of(vector.call(), vector.input()));
      assertThat(Vectors.differences(vector.expect(), answer)).as(vector.name()).isEmpty();
      if (vector.call().equals("meal-shares")) {
        assertThat(Vectors.differences(Map.of("leftoverGrams", 0.001), answer)).isNotEmpty();
      }
    }
  }

  private static void record(Page page) {
    double before = givenKj(page);
    page.locator("feed-page .tile").first().click();
    page.locator("feeding-tray button.deed").click();
    Glass.isAnotherOne(page);
    Glass.until(page, "before => document.querySelector('feed-page').desk.today.ration.givenKj.value > before", before);
  }

  private static double givenKj(Page page) {
    return ((Number) page.evaluate("document.querySelector('feed-page').desk.today.ration.givenKj.value")).doubleValue();
  }

  private static Object numbers(Page page) {
    return page.evaluate("(({ ration, findings, fish }) => JSON.stringify([ration.givenKj.value, ration.dueKj.value,"
        + " findings.map(({ key, days }) => [key, days]), fish.map(({ id, gotKj }) => [id, gotKj.value])]))"
        + "(document.querySelector('feed-page').desk.today)");
  }

  @SuppressWarnings("unchecked")
  private static List<String> rules(Page page) {
    return (List<String>) page.evaluate(
        "document.querySelector('feed-page').desk.today.findings.map(({ rule }) => rule)");
  }

  private List<JsonNode> feedings() throws Exception {
    Phone phone = Phone.signedIn(glass.url(), Glass.NAME, Glass.PASSWORD);
    return phone.pullAll(phone.tanks().get(0)).stream()
        .filter(entry -> entry.path("kind").asText().equals("feeding")).toList();
  }
}
