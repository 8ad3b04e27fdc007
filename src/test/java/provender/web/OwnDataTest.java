package provender.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import provender.Phone;
import provender.people.Erasure;
import provender.people.Households;
import provender.people.Keeper;
import provender.people.PeopleStore;
import provender.people.Role;
import provender.web.People.Newcomer;

@QuarkusTest
class OwnDataTest {
  private static final String PEOPLE = "/api/v1/households/" + People.HOUSEHOLD + "/people";

  @Inject Erasure erasure;
  @Inject Households households;
  @Inject PeopleStore people;

  @Test
  void a_keeper_takes_along_all_that_is_kept_about_them_and_nothing_of_others() {
    Newcomer one = People.KEEPER.someoneNew();
    String entry = feed(one);
    PasskeysTest.make(one, new SoftKey(PasskeysTest.origin()));
    Response export = one.asks().get("/api/v1/person/export.json");
    export.then().statusCode(200).header("Content-Disposition", startsWith("attachment"))
        .body("person.name", equalTo(one.name())).body("households[0].id", equalTo(People.HOUSEHOLD))
        .body("phones[0].name", equalTo("a phone")).body("passkeys[0].name", equalTo("Blue phone"))
        .body("changes[0].what", equalTo("joined")).body("damagedTanks.size()", equalTo(0));
    assertThat(export.<List<String>>path("entries.id")).containsExactly(entry);
    assertThat(export.<List<String>>path("entries.by")).containsOnly(one.id());
    assertThat(export.asString()).doesNotContain(one.session()).doesNotContain("$2a$").doesNotContain("publicKey");
  }

  @Test
  void who_left_still_takes_along_what_they_recorded() {
    Newcomer one = People.KEEPER.someoneNew();
    String entry = feed(one);
    one.asks().delete(PEOPLE + "/" + one.id()).then().statusCode(204);
    Response export = one.asks().get("/api/v1/person/export.json");
    assertThat(export.<List<String>>path("entries.id")).containsExactly(entry);
    assertThat(export.<String>path("households[0].endedAt")).isNotNull();
  }

  @Test
  void erased_the_name_is_gone_and_the_entries_stay_as_they_were() {
    Newcomer one = People.KEEPER.someoneNew();
    String entry = feed(one);
    SoftKey key = new SoftKey(PasskeysTest.origin());
    PasskeysTest.make(one, key);
    String before = sums();
    erase(one, "not their password").then().statusCode(400).body("errors[0].field", equalTo("password"));
    erase(one, People.A_PASSWORD).then().statusCode(204);

    one.asks().get("/api/v1/session").then().statusCode(401);
    given().contentType(ContentType.JSON).body(Map.of("name", one.name(), "password", People.A_PASSWORD)).post("/api/v1/session").then()
        .statusCode(400);
    PasskeysTest.signIn(key.used(PasskeysTest.challenge(), "localhost", one.id())).then().statusCode(400);

    assertThat(sums()).isEqualTo(before);
    People.KEEPER.asks().get("/api/v1/tanks/" + People.TANK + "/export.jsonl").then().statusCode(200);
    assertThat(People.KEEPER.asks().get("/api/v1/tanks/" + People.TANK + "/export.jsonl").asString()).contains(entry);
    String tanks = People.KEEPER.asks().get("/api/v1/tanks").asString();
    String household = People.STEWARD.asks().get(PEOPLE).asString();
    assertThat(tanks + household).doesNotContain(one.name()).contains("Former keeper ").contains(one.id());
  }

  @Test
  void what_still_waits_on_a_shared_phone_is_taken_after_its_keeper_was_erased() {
    Newcomer one = People.KEEPER.someoneNew();
    erase(one, People.A_PASSWORD).then().statusCode(204);
    var waiting = Phone.feeding(UUID.randomUUID().toString(), People.TANK, UUID.randomUUID().toString(), 1, one.id());
    People.KEEPER.asks().contentType(ContentType.JSON).body("{\"entries\":[" + waiting + "]}")
        .post("/api/v1/tanks/" + People.TANK + "/entries").then().body("answers[0].outcome", equalTo("accepted"));
  }

  @Test
  void the_last_steward_hands_over_first_unless_nobody_else_is_there() {
    Instant now = Instant.now();
    Keeper steward = founder(now);
    String household = people.memberships(steward.id()).get(0).household();
    String code = households.invite(household, steward, Role.KEEPER, now);
    Newcomer keeper = People.join(code, "Keeper " + UUID.randomUUID());
    assertThat(erasure.erase(steward, now).needsSteward()).isEqualTo("Home");
    assertThat(people.account(steward.name())).isNotNull();

    keeper.asks().delete("/api/v1/households/" + household + "/people/" + keeper.id()).then().statusCode(204);
    assertThat(erasure.erase(steward, now).neutralName()).startsWith("Former keeper ");
    assertThat(people.account(steward.name())).isNull();
    assertThat(people.memberships(steward.id())).isEmpty();
  }

  private Keeper founder(Instant now) {
    Keeper founder = households.found("Home", "Founder " + UUID.randomUUID(), People.A_PASSWORD, now).keeper();
    assertThat(founder).isNotNull();
    return founder;
  }

  private static String feed(Newcomer one) {
    String id = UUID.randomUUID().toString();
    var entry = Phone.feeding(id, People.TANK, UUID.randomUUID().toString(), 1, one.id());
    one.asks().contentType(ContentType.JSON).body("{\"entries\":[" + entry + "]}")
        .post("/api/v1/tanks/" + People.TANK + "/entries").then().body("answers[0].outcome", equalTo("accepted"));
    return id;
  }

  private static Response erase(Newcomer one, String password) {
    return one.asks().contentType(ContentType.JSON).body(Map.of("password", password)).post("/api/v1/person/erasure");
  }

  /** What the journal adds up to, page by page. */
  private static String sums() {
    return People.KEEPER.asks().get("/api/v1/tanks/" + People.TANK + "/checksums?size=500").jsonPath().getString("pages");
  }
}
