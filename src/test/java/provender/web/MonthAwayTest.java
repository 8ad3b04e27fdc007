package provender.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import provender.Phone;
import provender.web.People.Newcomer;

/** A phone comes back after thirty days with four hundred entries, and its keeper is no longer who they were. */
@QuarkusTest
class MonthAwayTest {
  private static final int UNSENT = 400;
  private static final int DAYS = 30;
  private static final OffsetDateTime LEFT = OffsetDateTime.parse("2026-05-01T06:00:00+02:00");
  private static final String PEOPLE = "/api/v1/households/" + People.HOUSEHOLD + "/people/";

  private Newcomer keeper = new Newcomer("", "", "");
  private final String device = UUID.randomUUID().toString();
  private String tank = "";
  private List<String> ids = List.of();
  private String batch = "";

  @BeforeEach
  void tap() {
    keeper = People.KEEPER.someoneNew();
    tank = People.STEWARD.asks().contentType(ContentType.JSON)
        .body("{\"name\":\"Away\",\"zone\":\"Europe/Berlin\"}").post("/api/v1/households/" + People.HOUSEHOLD + "/tanks").path("id");
    List<String> entries = new ArrayList<>();
    ids = new ArrayList<>();
    for (int i = 0; i < UNSENT; i++) {
      String id = UUID.randomUUID().toString();
      ids.add(id);
      entries.add(Phone.feeding(id, tank, device, i + 1, keeper.id())
          .put("happenedAt", LEFT.plusMinutes((long) i * DAYS * 24 * 60 / UNSENT).toString().replace("Z", "+00:00")).toString());
    }
    batch = "{\"entries\":[" + String.join(",", entries) + "]}";
  }

  @Test
  void their_session_was_revoked_so_all_waits_until_they_sign_in_again() {
    String phone = signedIn();
    String id = keeper.asks().get("/api/v1/session/devices").path("devices.find { !it.asking }.id");
    keeper.asks().delete("/api/v1/session/devices/" + id).then().statusCode(204);
    push(phone).then().statusCode(401).body("kind", equalTo("sign-in"));
    nothingCame();
    allCome(signedIn());
  }

  @Test
  void they_had_left_so_nothing_is_applied_until_they_are_let_in_again() {
    People.STEWARD.asks().delete(PEOPLE + keeper.id()).then().statusCode(204);
    push(keeper.session()).then().statusCode(404);
    push(signedIn()).then().statusCode(404);
    nothingCame();
    String again = keeper.asks().contentType(ContentType.JSON).body(Map.of("code", People.invitation(People.STEWARD, People.HOUSEHOLD, "keeper")))
        .post("/api/v1/join").then().statusCode(200).extract().cookie(Signed.COOKIE);
    allCome(again);
  }

  @Test
  void they_may_only_look_now_so_nothing_is_applied_until_a_steward_lets_them_record() {
    role("guest");
    push(keeper.session()).then().statusCode(403).body("kind", equalTo("guest"));
    nothingCame();
    role("keeper");
    allCome(keeper.session());
  }

  @Test
  void they_left_for_good_so_a_keeper_who_holds_the_phone_sends_it_in_their_name_and_a_foreign_one_cannot() {
    People.STEWARD.asks().delete(PEOPLE + keeper.id()).then().statusCode(204);
    People.OTHER_KEEPER.asks().contentType(ContentType.JSON).body(batch).post(entries()).then().statusCode(404);
    nothingCame();
    allCome(People.KEEPER.newSession());
  }

  private void nothingCame() {
    assertThat(People.KEEPER.asks().get(entries()).<Integer>path("head")).isZero();
  }

  /** Each of them once, in the order in which they were tapped, under whoever tapped them, however often they are sent. */
  private void allCome(String session) {
    push(session).then().statusCode(200).body("answers.outcome", everyItem(equalTo("accepted"))).body("head", equalTo(UNSENT));
    push(session).then().statusCode(200).body("answers.outcome", everyItem(equalTo("duplicate"))).body("head", equalTo(UNSENT));
    Response kept = People.KEEPER.asks().queryParam("limit", 500).get(entries());
    assertThat(kept.<List<String>>path("entries.id")).isEqualTo(ids);
    kept.then().body("entries.by", everyItem(equalTo(keeper.id())));
  }

  private Response push(String session) {
    return given().cookie(Signed.COOKIE, session).contentType(ContentType.JSON).body(batch).post(entries());
  }

  private String signedIn() {
    return given().contentType(ContentType.JSON).body(Map.of("name", keeper.name(), "password", People.A_PASSWORD)).post("/api/v1/session").then()
        .statusCode(200).extract().cookie(Signed.COOKIE);
  }

  private void role(String role) {
    People.STEWARD.asks().contentType(ContentType.JSON).body(Map.of("role", role)).put(PEOPLE + keeper.id()).then().statusCode(204);
  }

  private String entries() {
    return "/api/v1/tanks/" + tank + "/entries";
  }
}
