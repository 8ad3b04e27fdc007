package provender.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@QuarkusTest
class JoiningTest {
  private static final String HOUSEHOLD = "quernhaven";
  private static final String PASSWORD = "a lamp in the pump room";

  @Test
  void an_invitation_lets_one_person_in_once_in_the_role_it_names() {
    String code = invitation("guest");
    String name = newName();
    String session = join(code, name, PASSWORD).then().statusCode(200).body("keeper.name", equalTo(name))
        .body("households.role", hasItem("guest")).extract().cookie(Signed.COOKIE);
    given().cookie(Signed.COOKIE, session).get("/api/v1/tanks").then().body("tanks.id", hasItem(People.TANK));
    given().cookie(Signed.COOKIE, session).contentType(ContentType.JSON).body("{\"entries\":[]}")
        .post("/api/v1/tanks/" + People.TANK + "/entries").then().statusCode(403);

    join(code, newName(), PASSWORD).then().statusCode(400).body("errors[0].field", equalTo("code"));
  }

  @Test
  void a_bad_password_leaves_the_invitation_for_a_better_one() {
    String code = invitation("keeper");
    String name = newName();
    join(code, name, "short").then().statusCode(400).body("errors.field", hasItem("password"))
        .body("errors[0].takes", containsString("12 to 128 characters"));
    join(code, name, PASSWORD).then().statusCode(200);
  }

  @Test
  void a_keeper_of_another_household_comes_into_this_one_and_keeps_the_first() {
    String elsewhere = People.OTHER_STEWARD.asks().contentType(ContentType.JSON).body(Map.of("role", "keeper"))
        .post("/api/v1/households/tannelwick/invitations").path("code");
    String session = join(elsewhere, newName(), PASSWORD).cookie(Signed.COOKIE);
    given().cookie(Signed.COOKIE, session).contentType(ContentType.JSON).body(Map.of("code", invitation("guest"))).post("/api/v1/join")
        .then().statusCode(200).body("households.id", hasItem(HOUSEHOLD)).body("households.id", hasItem("tannelwick"));
  }

  @Test
  void a_name_that_is_taken_is_refused_by_name() {
    join(invitation("guest"), "Teo", PASSWORD).then().statusCode(400).body("errors.field", hasItem("name"));
  }

  @ParameterizedTest
  @CsvSource({"passwordpassword", "aaaaaaaaaaaaaaaa", "123456789012"})
  void a_password_that_anyone_would_try_is_refused(String password) {
    join(invitation("guest"), newName(), password).then().statusCode(400).body("errors.field", hasItem("password"));
  }

  @Test
  void a_steward_adds_a_tank_in_a_zone_that_exists() {
    People.STEWARD.asks().contentType(ContentType.JSON).body(Map.of("name", "Sump refuge", "zone", "Mars/Base"))
        .post("/api/v1/households/" + HOUSEHOLD + "/tanks").then().statusCode(400).body("errors[0].field", equalTo("zone"));
    String id = People.STEWARD.asks().contentType(ContentType.JSON).body(Map.of("name", "Sump refuge", "zone", "Europe/Berlin"))
        .post("/api/v1/households/" + HOUSEHOLD + "/tanks").then().statusCode(200).extract().path("id");
    People.KEEPER.asks().get("/api/v1/tanks").then().body("tanks.id", hasItem(id));
    People.OTHER_KEEPER.asks().get("/api/v1/tanks/" + id + "/entries").then().statusCode(404);
  }

  @Test
  void a_server_that_has_a_household_has_no_first_start() {
    given().get("/api/v1/first-start").then().body("open", equalTo(false));
  }

  @Test
  void an_invitation_is_kept_only_as_a_hash() {
    String code = invitation("keeper");
    assertThat(code).hasSizeGreaterThan(40);
    join(code.substring(1), newName(), PASSWORD).then().statusCode(400);
  }

  private static String newName() {
    return "Visitor " + UUID.randomUUID();
  }

  private static String invitation(String role) {
    return People.STEWARD.asks().contentType(ContentType.JSON).body(Map.of("role", role))
        .post("/api/v1/households/" + HOUSEHOLD + "/invitations").then().statusCode(200).extract().path("code");
  }

  private static Response join(String code, String name, String password) {
    return given().contentType(ContentType.JSON).body(Map.of("code", code, "name", name, "password", password)).post("/api/v1/join");
  }
}
