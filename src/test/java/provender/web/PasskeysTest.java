package provender.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import provender.web.People.Newcomer;

@QuarkusTest
class PasskeysTest {
  private static final String PLACE = "localhost";

  private Newcomer one = new Newcomer("", "", "");
  private SoftKey key = new SoftKey("");

  @BeforeEach
  void comeIn() {
    one = People.KEEPER.someoneNew();
    key = new SoftKey(origin());
  }

  @Test
  void a_passkey_is_made_with_the_password_once_more_and_then_signs_in_without_it() {
    make(one, key).then().statusCode(200).body("name", equalTo("Blue phone")).body("place", equalTo(PLACE)).body("usedAt", nullValue());
    String session = signIn(key.used(challenge(), PLACE, one.id())).then().statusCode(200)
        .body("keeper.id", equalTo(one.id())).extract().cookie(Signed.COOKIE);
    given().cookie(Signed.COOKIE, session).get("/api/v1/tanks").then().statusCode(200);
    named(one.asks()).get("/api/v1/passkeys").then().body("passkeys.name", contains("Blue phone")).body("passkeys[0].usedAt", notNullValue());
    named(one.asks()).get("/api/v1/session/devices").then().body("devices[0].name", equalTo("a phone with a passkey"));
  }

  @Test
  void without_the_password_no_passkey_is_begun() {
    named(one.asks()).contentType(ContentType.JSON).body(Map.of("password", "not their password")).post("/api/v1/passkeys/options").then()
        .statusCode(400).body("errors[0].field", equalTo("password"));
    make(one, key.made(challenge(), PLACE)).then().statusCode(400).body("errors[0].field", equalTo("credential"));
  }

  @Test
  void a_removed_passkey_opens_nothing_and_a_named_one_keeps_its_name() {
    String id = make(one, key).path("id");
    named(one.asks()).contentType(ContentType.JSON).body(Map.of("name", "Shed tablet")).put("/api/v1/passkeys/" + id).then().statusCode(204);
    named(one.asks()).contentType(ContentType.JSON).body(Map.of("name", "x".repeat(61))).put("/api/v1/passkeys/" + id).then().statusCode(400);
    named(one.asks()).get("/api/v1/passkeys").then().body("passkeys.name", contains("Shed tablet"));
    People.STEWARD.asks().delete("/api/v1/passkeys/" + id).then().statusCode(404);
    named(one.asks()).delete("/api/v1/passkeys/" + id).then().statusCode(204);
    signIn(key.used(challenge(), PLACE, one.id())).then().statusCode(400).body("errors[0].field", equalTo("credential"));
  }

  @Test
  void an_answer_holds_for_one_signing_in() {
    make(one, key);
    Map<String, Object> answer = key.used(challenge(), PLACE, one.id());
    signIn(answer).then().statusCode(200);
    signIn(answer).then().statusCode(400);
  }

  @Test
  void what_another_site_got_signed_opens_nothing() {
    make(one, key);
    SoftKey elsewhere = new SoftKey("https://elsewhere.example");
    make(one, elsewhere.made(challengeToMake(one), "elsewhere.example")).then().statusCode(400);
    signIn(key.used(challenge(), "elsewhere.example", one.id())).then().statusCode(400);
    signIn(elsewhere.used(challenge(), PLACE, one.id())).then().statusCode(400);
  }

  @Test
  void a_made_up_challenge_or_one_for_another_purpose_is_refused() {
    make(one, key);
    signIn(key.used("bWFkZSB1cA", PLACE, one.id())).then().statusCode(400);
    signIn(key.used(challengeToMake(one), PLACE, one.id())).then().statusCode(400);
    Newcomer other = People.KEEPER.someoneNew();
    make(one, new SoftKey(origin()).made(challengeToMake(other), PLACE)).then().statusCode(400);
  }

  @Test
  void a_phone_that_did_not_ask_for_its_owner_is_not_enough() {
    make(one, key);
    key.flags = SoftKey.ONLY_TOUCHED;
    signIn(key.used(challenge(), PLACE, one.id())).then().statusCode(400);
    make(one, new SoftKey(origin()).made(challenge(), PLACE)).then().statusCode(400);
  }

  @Test
  void a_copy_whose_counter_runs_behind_is_refused() {
    make(one, key);
    key.uses = 7;
    signIn(key.used(challenge(), PLACE, one.id())).then().statusCode(200);
    key.uses = 6;
    signIn(key.used(challenge(), PLACE, one.id())).then().statusCode(400);
  }

  @Test
  void a_passkey_speaks_for_its_owner_and_is_known_once() {
    make(one, key);
    Newcomer other = People.KEEPER.someoneNew();
    signIn(key.used(challenge(), PLACE, other.id())).then().statusCode(400);
    make(other, key.made(challengeToMake(other), PLACE)).then().statusCode(400);
    List<String> known = options(one).path("excludeCredentials.id");
    assertThat(known).hasSize(1);
  }

  @Test
  void who_had_to_be_helped_back_in_has_no_passkey_left() {
    make(one, key);
    String code = People.STEWARD.asks().post("/api/v1/households/" + People.HOUSEHOLD + "/people/" + one.id() + "/reset").path("code");
    named(given()).contentType(ContentType.JSON).body(Map.of("code", code, "password", "kelp forests at low tide")).post("/api/v1/reset").then()
        .statusCode(200);
    signIn(key.used(challenge(), PLACE, one.id())).then().statusCode(400);
  }

  @Test
  void under_a_bare_number_the_reason_is_said() {
    given().baseUri("http://127.0.0.1").post("/api/v1/session/passkey/options").then()
        .statusCode(409).body("kind", equalTo("needs-name"));
  }

  static Response make(Newcomer one, SoftKey key) {
    return make(one, key.made(challengeToMake(one), PLACE));
  }

  /** Under a name instead of the number that tests ask by default. */
  static RequestSpecification named(RequestSpecification asked) {
    return asked.baseUri("http://" + PLACE).port(RestAssured.port);
  }

  static String origin() {
    return "http://" + PLACE + ":" + RestAssured.port;
  }

  private static Response make(Newcomer one, Map<String, Object> credential) {
    return named(one.asks()).contentType(ContentType.JSON).body(Map.of("name", "Blue phone", "credential", credential)).post("/api/v1/passkeys");
  }

  private static Response options(Newcomer one) {
    return named(one.asks()).contentType(ContentType.JSON).body(Map.of("password", People.A_PASSWORD)).post("/api/v1/passkeys/options");
  }

  private static String challengeToMake(Newcomer one) {
    return options(one).then().statusCode(200).extract().path("challenge");
  }

  static String challenge() {
    return named(given()).post("/api/v1/session/passkey/options").then().statusCode(200).extract().path("challenge");
  }

  static Response signIn(Map<String, Object> credential) {
    return named(given()).contentType(ContentType.JSON).body(Map.of("credential", credential, "device", "a phone with a passkey"))
        .post("/api/v1/session/passkey");
  }
}
