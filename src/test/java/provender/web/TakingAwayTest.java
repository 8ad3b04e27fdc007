package provender.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.config.EncoderConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import provender.Phone;

/** A journal leaves as a file and comes back. */
@QuarkusTest
class TakingAwayTest {
  private String tank = "";

  @BeforeEach
  void furnish() {
    tank = People.STEWARD.asks().contentType(ContentType.JSON)
        .body("{\"name\":\"Quarantine\",\"zone\":\"Europe/Berlin\"}").post("/api/v1/households/quernhaven/tanks").path("id");
  }

  @Test
  void what_was_saved_comes_back_unchanged_and_a_second_time_changes_nothing() {
    String saved = People.KEEPER.asks().get("/api/v1/tanks/" + People.TANK + "/export.jsonl").asString();
    int lines = (int) saved.lines().count();
    bringIn(tank, true, saved).then().statusCode(200)
        .body("accepted", equalTo(lines)).body("refused", hasSize(0)).body("head", equalTo(lines));
    bringIn(tank, true, saved).then().body("duplicate", equalTo(lines)).body("accepted", equalTo(0)).body("head", equalTo(lines));

    String copy = People.KEEPER.asks().get("/api/v1/tanks/" + tank + "/export.jsonl").asString();
    assertThat(withoutArrival(copy)).isEqualTo(withoutArrival(saved).replace("\"tank\":\"" + People.TANK + "\"", "\"tank\":\"" + tank + "\""));
    bringIn(People.TANK, false, saved).then().body("duplicate", equalTo(lines)).body("refused", hasSize(0));
  }

  @Test
  void every_line_that_cannot_be_used_is_listed_by_its_number_and_the_others_are_kept() {
    ObjectNode good = entry("one");
    ObjectNode spoilt = entry("two").put("happenedAt", "yesterday");
    bringIn(tank, false, good + "\nno json\n\n" + spoilt + "\n[]\n" + entry("three") + "\n").then().statusCode(200)
        .body("accepted", equalTo(2))
        .body("refused.line", equalTo(List.of(2, 5, 4)))
        .body("refused.find { it.line == 4 }.errors[0].field", equalTo("happenedAt"));
    bringIn(tank, false, entry("of another").put("tank", "elsewhere").toString()).then().body("refused[0].errors[0].field", equalTo("tank"));
  }

  @Test
  void a_spreadsheet_finds_no_formula_and_every_number_untouched() {
    ObjectNode entry = entry("=HYPERLINK(\"http://x\")");
    entry.withObject("/body").put("delta", -3.50).put("plus", "+1").put("at", "@a").put("tab", "\tb").put("plain", "a, \"b\"\nc");
    push(entry);

    String csv = People.KEEPER.asks().get("/api/v1/tanks/" + tank + "/export.csv").then().statusCode(200).extract().asString();
    assertThat(csv).contains("\"'=HYPERLINK(\"\"http://x\"\")\"", ",-3.5,", ",'+1,", ",'@a,", ",'\tb\r\n", "\"a, \"\"b\"\"\nc\"");
    assertThat(csv.lines().findFirst().orElseThrow()).startsWith("seq,happenedAt,zone,kind,by,").contains("body.items.0.grams");
    assertThat(csv).endsWith("\r\n");
  }

  @Test
  void checksums_of_pages_tell_a_phone_which_page_to_fetch_anew() {
    push(entry("a"), entry("b"), entry("c"));
    Response pages = People.GUEST.asks().queryParam("size", 2).get("/api/v1/tanks/" + tank + "/checksums");
    pages.then().body("pages.from", equalTo(List.of(1, 3))).body("pages.to", equalTo(List.of(2, 3))).body("pages.count", equalTo(List.of(2, 1)));
    Response page = People.GUEST.asks().queryParam("limit", 2).get("/api/v1/tanks/" + tank + "/entries");
    assertThat(page.jsonPath().getLong("checksum")).isEqualTo(pages.jsonPath().getLong("pages[0].checksum"));
    People.GUEST.asks().queryParam("size", 0).get("/api/v1/tanks/" + tank + "/checksums").then().statusCode(400);
  }

  @Test
  void a_change_that_waits_for_a_person_is_answered_with_its_fields() {
    push(Phone.switched(tank, UUID.randomUUID().toString(), 1, "teo", true, 0));
    push(Phone.switched(tank, UUID.randomUUID().toString(), 1, "teo", false, 0)).then()
        .body("answers[0].outcome", equalTo("conflicted")).body("answers[0].fields", equalTo(List.of("running"))).body("answers[0].seq", equalTo(2));
  }

  @Test
  void an_app_of_too_old_a_version_is_told_what_to_do_and_a_newer_one_is_let_in() {
    People.KEEPER.asks().header(AppVersion.HEADER, 0).get("/api/v1/tanks").then().statusCode(426)
        .contentType(Problem.MEDIA_TYPE).header("Upgrade", "provender-app/1").body("kind", equalTo("app-too-old"));
    People.KEEPER.asks().header(AppVersion.HEADER, "one").get("/api/v1/tanks").then().statusCode(400);
    People.KEEPER.asks().header(AppVersion.HEADER, 1).get("/api/v1/tanks").then().statusCode(200);
    People.KEEPER.asks().header(AppVersion.HEADER, 99).get("/api/v1/tanks").then().statusCode(200);
  }

  @Test
  void a_no_says_whether_signing_in_would_help() {
    People.STRANGER.asks().get("/api/v1/tanks").then().statusCode(401).body("kind", equalTo("sign-in"));
    People.GUEST.asks().contentType(ContentType.JSON).body("{\"entries\":[]}").post("/api/v1/tanks/" + tank + "/entries").then()
        .statusCode(403).body("kind", equalTo("guest"));
    bringInAs(People.KEEPER, tank, false, "").then().statusCode(403).body("kind", equalTo("steward-only"));
  }

  @Test
  void only_an_import_may_be_long() {
    People.KEEPER.asks().contentType(ContentType.JSON).body("{\"a\":\"" + "x".repeat(1_100_000) + "\"}").post("/api/v1/calc/weight").then()
        .statusCode(413);
    bringIn(tank, false, entry("x").toString() + "\n".repeat(1_100_000)).then().statusCode(200).body("accepted", equalTo(1));
  }

  private ObjectNode entry(String note) {
    ObjectNode entry = Phone.feeding(UUID.randomUUID().toString(), tank, UUID.randomUUID().toString(), 1, "teo");
    entry.withObject("/body").put("note", note);
    return entry;
  }

  private Response push(ObjectNode... entries) {
    return People.KEEPER.asks().contentType(ContentType.JSON).body("{\"entries\":" + List.of(entries) + "}")
        .post("/api/v1/tanks/" + tank + "/entries");
  }

  private static Response bringIn(String tank, boolean adopt, String lines) {
    return bringInAs(People.STEWARD, tank, adopt, lines);
  }

  private static Response bringInAs(People who, String tank, boolean adopt, String lines) {
    return who.asks()
        .config(RestAssuredConfig.config().encoderConfig(EncoderConfig.encoderConfig().encodeContentTypeAs("application/jsonl", ContentType.TEXT)
            .appendDefaultContentCharsetToContentTypeIfUndefined(false).defaultContentCharset("UTF-8")))
        .queryParam("adopt", adopt).contentType("application/jsonl").body(lines.isEmpty() ? "\n" : lines)
        .post("/api/v1/tanks/" + tank + "/import");
  }

  private static String withoutArrival(String lines) {
    return lines.replaceAll("\"receivedAt\":\"[^\"]*\"", "");
  }
}
