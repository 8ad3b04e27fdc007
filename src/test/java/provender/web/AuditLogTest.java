package provender.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import io.smallrye.common.net.Inet;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import provender.Phone;
import provender.photo.Snapshot;

/** What the log for whoever runs the server says, and what it never does. */
@QuarkusTest
class AuditLogTest {
  private static final Logger AUDIT = Logger.getLogger("provender.audit");

  @ConfigProperty(name = "quarkus.http.proxy.trusted-proxies")
  List<String> proxies = List.of();

  private final List<String> lines = new CopyOnWriteArrayList<>();
  private final Handler listening = new Handler() {
    @Override
    public void publish(LogRecord line) {
      lines.add(line.getMessage());
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}
  };

  @BeforeEach
  void listen() {
    AUDIT.addHandler(listening);
  }

  @AfterEach
  void stopListening() {
    AUDIT.removeHandler(listening);
  }

  @Test
  void coming_in_being_refused_and_going_are_logged_with_when_who_from_where_and_how_it_ended() throws Exception {
    String session = People.KEEPER.newSession();
    signIn("Teo", "a wrong password that nobody has");
    given().cookie(Signed.COOKIE, session).delete("/api/v1/session").then().statusCode(204);
    assertThat(events()).extracting(event -> event.get("method").asText() + " " + event.get("status").asInt() + " " + event.get("outcome").asText())
        .containsSubsequence("POST 200 done", "POST 400 refused", "DELETE 204 done");
    String id = People.KEEPER.asks().get("/api/v1/session").path("keeper.id");
    assertThat(events()).filteredOn(event -> event.get("outcome").asText().equals("done"))
        .allSatisfy(event -> assertThat(event.get("keeper").asText()).isEqualTo(id));
    assertThat(events()).allSatisfy(event -> {
      assertThat(event.get("at").asText()).endsWith("Z");
      assertThat(event.get("address").asText()).isNotEmpty();
      assertThat(event.get("path").asText()).startsWith("/api/v1/");
    });
  }

  @Test
  void whoever_reaches_for_what_is_not_theirs_is_named_by_their_id() throws Exception {
    String id = People.OTHER_KEEPER.asks().get("/api/v1/session").path("keeper.id");
    People.OTHER_KEEPER.asks().get("/api/v1/tanks/" + People.TANK + "/entries").then().statusCode(404);
    assertThat(events()).anySatisfy(event -> {
      assertThat(event.get("keeper").asText()).isEqualTo(id);
      assertThat(event.get("status").asInt()).isEqualTo(404);
      assertThat(event.get("path").asText()).isEqualTo("/api/v1/tanks/" + People.TANK + "/entries");
    });
  }

  @Test
  void an_erased_picture_is_logged_and_one_that_was_sent_is_not() throws Exception {
    String id = UUID.randomUUID().toString();
    String entry = Phone.feeding(id, People.TANK, UUID.randomUUID().toString(), 1, "teo").put("kind", "photo").toString();
    People.KEEPER.asks().contentType(ContentType.JSON).body("{\"entries\":[" + entry + "]}").post("/api/v1/tanks/" + People.TANK + "/entries");
    String path = "/api/v1/tanks/" + People.TANK + "/photos/" + id;
    People.KEEPER.asks().contentType("image/jpeg").body(Snapshot.jpeg(8, 8)).put(path).then().statusCode(201);
    People.KEEPER.asks().delete(path).then().statusCode(204);
    assertThat(events()).filteredOn(event -> event.get("path").asText().equals(path)).singleElement()
        .satisfies(event -> assertThat(event.get("method").asText()).isEqualTo("DELETE"));
  }

  @Test
  void behind_a_proxy_on_this_machine_the_address_is_the_phones_and_another_phone_is_not_made_to_wait_for_its_guesses() throws Exception {
    for (int i = 0; i < 5; i++) {
      guessFrom("203.0.113.9", i).then().statusCode(400);
    }
    guessFrom("203.0.113.77", 5).then().statusCode(400);
    assertThat(events()).extracting(event -> event.get("address").asText())
        .containsOnly("203.0.113.9", "203.0.113.77").contains("203.0.113.9");
  }

  private static Response guessFrom(String address, int guess) {
    return given().header("X-Forwarded-For", address).contentType(ContentType.JSON)
        .body(Map.of("name", "Warden of the far pier", "password", "guess " + guess)).post("/api/v1/session");
  }

  @Test
  void a_journal_carried_away_is_logged_and_what_is_recorded_at_the_tank_is_not() throws Exception {
    People.KEEPER.asks().contentType(ContentType.JSON).body(Map.of("entries", List.of()))
        .post("/api/v1/tanks/" + People.TANK + "/entries").then().statusCode(200);
    People.KEEPER.asks().get("/api/v1/tanks/" + People.TANK + "/export.jsonl").then().statusCode(200);
    assertThat(events()).extracting(event -> event.get("path").asText())
        .contains("/api/v1/tanks/" + People.TANK + "/export.jsonl").doesNotContain("/api/v1/tanks/" + People.TANK + "/entries");
  }

  @Test
  void no_password_token_or_code_is_ever_logged() {
    String session = People.STEWARD.newSession();
    String code = People.invitation(People.STEWARD, People.HOUSEHOLD, "guest");
    signIn("Teo", "a wrong password that nobody has");
    People.join(code, "Logged visitor");
    assertThat(lines).hasSizeGreaterThanOrEqualTo(4).noneMatch(line -> line.contains(session) || line.contains(code)
        || line.contains("a wrong password") || line.contains("demo-lantern") || line.contains(People.A_PASSWORD));
  }

  @Test
  void a_line_cannot_be_forged_through_a_path() throws Exception {
    given().urlEncodingEnabled(false).get("/api/v1/tanks/x%0d%0a%7b%22outcome%22:%22done%22%7d\"/entries".replace("\"", "%22")).then().statusCode(401);
    assertThat(lines).isNotEmpty().allMatch(line -> line.lines().count() == 1);
    assertThat(events()).noneMatch(event -> event.get("outcome").asText().equals("done"));
  }

  /** Quarkus takes a bare IPv6 address for a name and asks a name server about it at each request, for 5 s where there is none. */
  @Test
  void no_name_server_is_asked_who_may_say_where_a_request_comes_from() {
    assertThat(proxies).isNotEmpty().allSatisfy(proxy -> assertThat(Inet.parseCidrAddress(proxy)).as(proxy).isNotNull());
  }

  private List<JsonNode> events() throws Exception {
    ObjectMapper json = new ObjectMapper();
    List<JsonNode> events = new CopyOnWriteArrayList<>();
    for (String line : lines) {
      events.add(json.readTree(line));
    }
    return events;
  }

  private static void signIn(String name, String password) {
    given().contentType(ContentType.JSON).body(Map.of("name", name, "password", password)).post("/api/v1/session").then().statusCode(400);
  }
}
