package provender.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
class SigningInTest {

  @Test
  void the_session_is_a_cookie_that_scripts_cannot_read_and_other_sites_cannot_send() {
    signIn("Teo", "demo-lantern-teo").then().statusCode(200)
        .header("Set-Cookie", containsString("HttpOnly"))
        .header("Set-Cookie", containsString("SameSite=Strict"))
        .body("keeper.name", equalTo("Teo"))
        .body("households.role", org.hamcrest.Matchers.hasItem("keeper"));
  }

  @Test
  void signing_in_again_gives_another_session_and_never_takes_one_that_was_planted() {
    String planted = "planted-by-someone-else";
    String first = given().cookie(Signed.COOKIE, planted).contentType(ContentType.JSON)
        .body(Map.of("name", "Teo", "password", "demo-lantern-teo")).post("/api/v1/session").cookie(Signed.COOKIE);
    assertThat(first).isNotEqualTo(planted).isNotEqualTo(People.KEEPER.newSession());
    given().cookie(Signed.COOKIE, planted).get("/api/v1/session").then().statusCode(401);
  }

  @Test
  void signing_in_ends_the_session_that_the_browser_had() {
    String before = People.KEEPER.newSession();
    given().cookie(Signed.COOKIE, before).contentType(ContentType.JSON).body(Map.of("name", "Ilka", "password", "demo-lantern-ilka"))
        .post("/api/v1/session").then().statusCode(200);
    given().cookie(Signed.COOKIE, before).get("/api/v1/session").then().statusCode(401);
  }

  @Test
  void after_signing_out_the_cookie_opens_nothing() {
    String session = People.KEEPER.newSession();
    given().cookie(Signed.COOKIE, session).delete("/api/v1/session").then().statusCode(204);
    given().cookie(Signed.COOKIE, session).get("/api/v1/tanks").then().statusCode(401);
  }

  @Test
  void a_wrong_password_and_an_unknown_name_get_the_same_answer() {
    Response wrong = signIn("Maren", "not-it");
    Response unknown = signIn("Nobody at all", "not-it");
    assertThat(wrong.statusCode()).isEqualTo(400).isEqualTo(unknown.statusCode());
    assertThat(wrong.asString()).isEqualTo(unknown.asString());
  }

  @Test
  void whoever_keeps_guessing_waits_but_others_are_not_kept_out() {
    int answer = 0;
    for (int i = 0; i < 40 && answer != 429; i++) {
      answer = signIn("Ghost of the pump room", "guess " + i).statusCode();
    }
    assertThat(answer).as("each wait is twice the one before, so even a slow guesser meets one").isEqualTo(429);
    signIn("Teo", "demo-lantern-teo").then().statusCode(200);
  }

  @Test
  void a_missing_field_is_named_with_what_it_takes() {
    given().contentType(ContentType.JSON).body("{\"name\":\"Teo\"}").post("/api/v1/session").then().statusCode(400)
        .contentType(Problem.MEDIA_TYPE)
        .body("errors[0].field", equalTo("password"))
        .body("errors[0].takes", containsString("1 to 200 characters"));
  }

  private static Response signIn(String name, String password) {
    return given().contentType(ContentType.JSON).body(Map.of("name", name, "password", password)).post("/api/v1/session");
  }
}
