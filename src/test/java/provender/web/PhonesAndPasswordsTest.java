package provender.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.notNullValue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import provender.web.People.Newcomer;

@QuarkusTest
class PhonesAndPasswordsTest {
  private static final String NEW = "kelp forests at low tide";

  @Test
  void a_keeper_sees_their_own_phones_and_signs_a_lost_one_out() {
    Newcomer one = People.KEEPER.someoneNew();
    String lost = signIn(one.name(), People.A_PASSWORD, "Lost phone\r\nX: y").cookie(Signed.COOKIE);
    Response devices = one.asks().get("/api/v1/session/devices");
    devices.then().body("devices.size()", equalTo(2)).body("devices.name", hasItem("a phone"))
        .body("devices.find { it.asking }.name", equalTo("a phone")).body("devices[0].lastUsedAt", notNullValue());
    String id = devices.path("devices.find { !it.asking }.id");
    assertThat(devices.asString()).contains("Lost phoneX: y").doesNotContain(lost);

    People.STEWARD.asks().delete("/api/v1/session/devices/" + id).then().statusCode(404);
    one.asks().delete("/api/v1/session/devices/" + id).then().statusCode(204);
    given().cookie(Signed.COOKIE, lost).get("/api/v1/session").then().statusCode(401);
    one.asks().get("/api/v1/session").then().statusCode(200);
  }

  @Test
  void all_other_phones_are_signed_out_at_once() {
    Newcomer one = People.GUEST.someoneNew();
    String other = signIn(one.name(), People.A_PASSWORD, "other").cookie(Signed.COOKIE);
    one.asks().delete("/api/v1/session/devices").then().statusCode(204);
    given().cookie(Signed.COOKIE, other).get("/api/v1/session").then().statusCode(401);
    one.asks().get("/api/v1/session/devices").then().body("devices.size()", equalTo(1));
  }

  @Test
  void a_password_is_changed_with_the_old_one_and_other_phones_sign_in_anew() {
    Newcomer one = People.KEEPER.someoneNew();
    String other = signIn(one.name(), People.A_PASSWORD, "other").cookie(Signed.COOKIE);
    change(one, "not the old one", NEW).then().statusCode(400).body("errors[0].field", equalTo("old"));
    change(one, People.A_PASSWORD, one.name()).then().statusCode(400).body("errors[0].field", equalTo("password"));
    given().cookie(Signed.COOKIE, other).get("/api/v1/session").then().statusCode(200);

    change(one, People.A_PASSWORD, NEW).then().statusCode(204);
    one.asks().get("/api/v1/session").then().statusCode(200);
    given().cookie(Signed.COOKIE, other).get("/api/v1/session").then().statusCode(401);
    signIn(one.name(), People.A_PASSWORD, "").then().statusCode(400);
    signIn(one.name(), NEW, "").then().statusCode(200);
  }

  @Test
  void every_sign_of_a_long_password_counts() {
    Newcomer one = People.KEEPER.someoneNew();
    String eighty = "Behind the third pump hangs a wet glove, and nobody knows whose hand it fits north";
    change(one, People.A_PASSWORD, eighty).then().statusCode(204);
    signIn(one.name(), eighty.replace("north", "south"), "").then().statusCode(400);
    signIn(one.name(), eighty, "").then().statusCode(200);
  }

  @Test
  void a_steward_makes_a_link_and_whoever_forgot_chooses_a_new_password_once() {
    Newcomer one = People.KEEPER.someoneNew();
    String code = reset(People.STEWARD, one).then().statusCode(200).extract().path("code");
    follow(code, "short").then().statusCode(400).body("errors[0].field", equalTo("password"));
    String session = follow(code, NEW).then().statusCode(200).body("keeper.id", equalTo(one.id())).extract().cookie(Signed.COOKIE);
    given().cookie(Signed.COOKIE, session).get("/api/v1/tanks").then().statusCode(200);
    one.asks().get("/api/v1/session").then().statusCode(401);
    signIn(one.name(), NEW, "").then().statusCode(200);
    follow(code, "another kelp forest").then().statusCode(400).body("errors[0].field", equalTo("code"));
    List<String> changes = People.STEWARD.asks().get("/api/v1/households/" + People.HOUSEHOLD + "/people")
        .path("changes.findAll { it.about == '" + one.id() + "' }.what");
    assertThat(changes).contains("reset");
  }

  @Test
  void a_steward_cannot_come_into_another_household_by_way_of_someone_who_belongs_to_both() {
    Newcomer both = People.KEEPER.someoneNew();
    String code = People.invitation(People.OTHER_STEWARD, "tannelwick", "keeper");
    both.asks().contentType(ContentType.JSON).body(Map.of("code", code)).post("/api/v1/join").then().statusCode(200);
    reset(People.STEWARD, both).then().statusCode(403).body("kind", equalTo("elsewhere-too"));
    reset(People.STEWARD, People.OTHER_KEEPER.someoneNew()).then().statusCode(404);
  }

  private static Response reset(People steward, Newcomer about) {
    return steward.asks().post("/api/v1/households/" + People.HOUSEHOLD + "/people/" + about.id() + "/reset");
  }

  private static Response follow(String code, String password) {
    return given().contentType(ContentType.JSON).body(Map.of("code", code, "password", password)).post("/api/v1/reset");
  }

  private static Response change(Newcomer one, String old, String password) {
    return one.asks().contentType(ContentType.JSON).body(Map.of("old", old, "password", password)).post("/api/v1/session/password");
  }

  private static Response signIn(String name, String password, String device) {
    return given().contentType(ContentType.JSON).body(Map.of("name", name, "password", password, "device", device)).post("/api/v1/session");
  }
}
