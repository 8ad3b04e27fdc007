package provender.web;

import static io.restassured.RestAssured.given;
import static io.restassured.config.EncoderConfig.encoderConfig;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.config.RestAssuredConfig;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import provender.Phone;
import provender.web.People.Newcomer;

/** What someone with bad intentions would try first. */
@QuarkusTest
class AttacksTest {
  private static final String ENTRIES = "/api/v1/tanks/" + People.TANK + "/entries";

  @Inject EntityManager database;

  @TestHTTPResource("/")
  URL server;

  @Test
  void whoever_steals_the_table_of_sessions_can_sign_in_with_nothing_in_it() {
    Newcomer one = People.KEEPER.someoneNew();
    List<?> kept = database.createNativeQuery("select token_hash, id from keeper_session where keeper_id = ?1").setParameter(1, one.id()).getResultList();
    assertThat(kept).hasSize(1);
    for (Object value : (Object[]) kept.get(0)) {
      assertThat(value).isNotEqualTo(one.session());
      given().cookie(Signed.COOKIE, (String) value).get("/api/v1/session").then().statusCode(401);
    }
  }

  @Test
  void no_answer_gives_away_a_session_or_what_a_password_became() {
    Newcomer one = People.STEWARD.someoneNew();
    for (String path : List.of("/api/v1/session", "/api/v1/session/devices", "/api/v1/tanks", "/api/v1/households/" + People.HOUSEHOLD + "/people")) {
      assertThat(one.asks().get(path).asString()).doesNotContain(one.session(), "$2a$", "token", "hash");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"text/plain", "application/x-www-form-urlencoded"})
  void a_form_on_another_site_cannot_write_even_from_a_browser_that_says_nothing_of_where_it_is(String type) {
    RestAssuredConfig asItStands = RestAssured.config().encoderConfig(encoderConfig().encodeContentTypeAs(type, ContentType.TEXT));
    People.KEEPER.asks().config(asItStands).contentType(type).body("{\"entries\":[]}").post(ENTRIES).then().statusCode(415);
    People.KEEPER.asks().header("Origin", "null").contentType(ContentType.JSON).body("{\"entries\":[]}").post(ENTRIES).then().statusCode(403);
  }

  @Test
  void a_newcomer_cannot_name_their_own_role_household_or_id() {
    String code = People.invitation(People.STEWARD, People.HOUSEHOLD, "guest");
    Response came = given().contentType(ContentType.JSON).body(Map.of("code", code, "name", "Upstart " + UUID.randomUUID(), "password", People.A_PASSWORD,
        "role", "steward", "household", "tannelwick", "id", "maren", "keeper", Map.of("id", "maren"))).post("/api/v1/join");
    came.then().statusCode(200).body("keeper.id", not(equalTo("maren")))
        .body("households.id", equalTo(List.of(People.HOUSEHOLD))).body("households.role", everyItem(equalTo("guest")));
  }

  @Test
  void an_entry_cannot_name_its_own_place_nor_stand_in_another_tank_or_under_a_stranger() {
    var entry = Phone.feeding(UUID.randomUUID().toString(), People.TANK, UUID.randomUUID().toString(), 1, "teo")
        .put("seq", 1).put("receivedAt", "2001-01-01T00:00:00Z").put("household", "tannelwick");
    int seq = push(entry.toString()).then().body("answers[0].outcome", equalTo("accepted")).extract().path("answers[0].seq");
    assertThat(seq).isGreaterThan(1);
    People.KEEPER.asks().get(ENTRIES + "?after=" + (seq - 1)).then().body("entries[0].seq", equalTo(seq))
        .body("entries[0].receivedAt", not(equalTo("2001-01-01T00:00:00Z")));
    var elsewhere = Phone.feeding(UUID.randomUUID().toString(), "tannelwick-market", UUID.randomUUID().toString(), 1, "teo");
    push(elsewhere.toString()).then().body("answers[0].outcome", equalTo("refused")).body("answers[0].problem.errors.field", hasItem("tank"));
    var stranger = Phone.feeding(UUID.randomUUID().toString(), People.TANK, UUID.randomUUID().toString(), 1, "bram");
    push(stranger.toString()).then().body("answers[0].outcome", equalTo("refused")).body("answers[0].problem.errors.field", hasItem("by"));
  }

  @Test
  void json_that_swells_or_nests_without_end_is_refused_at_once() {
    List<String> bombs = List.of(
        "[".repeat(200_000), "{\"a\":".repeat(100_000), "{\"entries\":" + "[".repeat(5000) + "]".repeat(5000) + "}",
        "{\"name\":" + "9".repeat(500_000) + "}", "{\"entries\":[{\"body\":{\"grams\":1e999999999}}]}", "{\"a\":1,\"a\":2}", "\u0000", "{}{}");
    for (String bomb : bombs) {
      for (String path : List.of("/api/v1/session", "/api/v1/join", "/api/v1/calc/weight", ENTRIES)) {
        assertThat(post(path, bomb).statusCode()).as(path + " " + bomb.substring(0, Math.min(30, bomb.length()))).isBetween(200, 499);
      }
    }
    var swollen = Phone.feeding(UUID.randomUUID().toString(), People.TANK, UUID.randomUUID().toString(), 1, "teo").toString()
        .replace("3.5", "1e999999999");
    assertThat(push(swollen).statusCode()).isBetween(200, 499);
    given().get("/q/health/ready").then().statusCode(200);
  }

  @Test
  void what_is_not_asked_for_is_not_there() {
    for (String method : List.of("TRACE", "CONNECT", "PROPFIND")) {
      assertThat(given().request(method, "/api/v1/tanks").statusCode()).as(method).isBetween(400, 501);
    }
    for (String path : List.of("/.git/config", "/q/dev-ui", "/q/arc", "/q/metrics", "/lib/", "/shared/", "/pom.xml", "/h2-console")) {
      assertThat(People.STEWARD.asks().get(path).statusCode()).as(path).isIn(404, 405);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"/api/v1/session:1048577", "/api/v1/tanks/quernhaven-hall/import:67108865"})
  void a_body_that_announces_itself_as_too_long_is_not_read(String pathAndLength) throws Exception {
    String[] parts = pathAndLength.split(":");
    try (Socket socket = new Socket(server.getHost(), server.getPort())) {
      OutputStream out = socket.getOutputStream();
      out.write(("POST " + parts[0] + " HTTP/1.1\r\nHost: x\r\nCookie: " + People.STEWARD.cookie() + "\r\nContent-Type: application/jsonl\r\nContent-Length: "
          + parts[1] + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
      out.flush();
      assertThat(new String(socket.getInputStream().readNBytes(12), StandardCharsets.US_ASCII)).isEqualTo("HTTP/1.1 413");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"a%0d%0aX-Smuggled:%20yes", "%00", "..%2f..%2fetc%2fpasswd", "%2e%2e", "quernhaven%20", "QUERNHAVEN", "%25", "_uernhaven"})
  void an_address_is_taken_as_it_stands_and_finds_nothing_else(String id) {
    for (String path : List.of("/api/v1/households/" + id + "/people", "/api/v1/tanks/" + id + "/export.csv", "/api/v1/tanks/" + id + "/checksums")) {
      Response answer = People.STEWARD.asks().urlEncodingEnabled(false).get(path);
      assertThat(answer.statusCode()).as(path).isIn(400, 404);
      answer.then().header("X-Smuggled", nullValue());
    }
  }

  /** With one of these an address would not read as what it leads to: neither the limits nor the audit log would know it. */
  @ParameterizedTest
  @ValueSource(strings = {"/api;/v1/first-start", "/api;x/v1/first-start", "/api/v1;x=1/first-start", "/api/v1/first-start;x", "/api%3Bx/v1/first-start", "/api%3b/v1/first-start", "/api%2Fv1/first-start", "/x/..%2Fapi/v1/first-start", "/api%5Cv1/first-start", "/%2e%2e;/api/v1/first-start"})
  void no_address_leads_to_a_resource_by_another_name_than_its_own(String path) {
    given().urlEncodingEnabled(false).get(path).then().statusCode(404).contentType(Problem.MEDIA_TYPE);
  }

  /** PostgreSQL keeps U+0000 in no text, and says so with a fault of its own. */
  @Test
  void a_character_that_is_none_opens_nothing_and_breaks_nothing() {
    People.STEWARD.asks().urlEncodingEnabled(false).delete("/api/v1/session/devices/any%00thing").then().statusCode(404);
    post("/api/v1/session", "{\"name\":\"Teo\\u0000\",\"password\":\"any\"}").then().statusCode(400).body("errors[0].field", equalTo("name"));
    ObjectNode entry = Phone.feeding(UUID.randomUUID().toString(), People.TANK, UUID.randomUUID().toString(), 1, "teo");
    entry.withObject("/body").put("note", "a\0b");
    push(entry.toString()).then().statusCode(200).body("answers[0].outcome", equalTo("accepted"));
    String kept = People.KEEPER.asks().get(ENTRIES + "?limit=1&after=" + (People.KEEPER.asks().get(ENTRIES).<Integer>path("head") - 1)).asString();
    assertThat(kept).contains("a\\u0000b");
  }

  @Test
  void a_phone_cannot_put_a_line_of_its_own_into_an_answer() {
    Newcomer one = People.KEEPER.someoneNew();
    post("/api/v1/session", "{\"name\":\"" + one.name() + "\",\"password\":\"" + People.A_PASSWORD + "\",\"device\":\"x\\r\\nSet-Cookie: provender=planted\"}").then()
        .statusCode(200).header("Set-Cookie", not(org.hamcrest.Matchers.containsString("planted")));
  }

  private static Response push(String entry) {
    return post(ENTRIES, "{\"entries\":[" + entry + "]}");
  }

  private static Response post(String path, String body) {
    // Whoever signs in or joins ends the session they come with.
    var asked = path.equals(ENTRIES) ? People.KEEPER.asks() : given();
    return asked.contentType(ContentType.JSON).body(body.getBytes(StandardCharsets.UTF_8)).post(path);
  }
}
