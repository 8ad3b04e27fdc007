package provender.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import provender.Phone;
import provender.people.Households;
import provender.people.Keeper;
import provender.people.PeopleStore;
import provender.people.Role;
import provender.web.People.Newcomer;

@QuarkusTest
class MembersTest {
  private static final String PEOPLE = "/api/v1/households/" + People.HOUSEHOLD + "/people";

  @Inject Households households;
  @Inject PeopleStore store;

  @Test
  void a_steward_changes_what_someone_may_do_and_it_holds_from_the_next_request_on() {
    Newcomer one = People.GUEST.someoneNew();
    push(one).then().statusCode(403);
    role(People.STEWARD.asks(), one, "keeper").then().statusCode(204);
    push(one).then().statusCode(200);
    People.KEEPER.asks().get(PEOPLE).then()
        .body("people.find { it.id == '" + one.id() + "' }.role", equalTo("keeper"))
        .body("changes[0].what", equalTo("role")).body("changes[0].by", equalTo("maren")).body("changes[0].about", equalTo(one.id()));
    role(People.STEWARD.asks(), one, "king").then().statusCode(400).body("errors[0].field", equalTo("role"));
  }

  @Test
  void whose_membership_is_ended_reads_and_writes_no_more_while_their_session_goes_on() {
    Newcomer one = People.KEEPER.someoneNew();
    People.STEWARD.asks().delete(PEOPLE + "/" + one.id()).then().statusCode(204);
    push(one).then().statusCode(404);
    one.asks().get("/api/v1/tanks/" + People.TANK + "/entries").then().statusCode(404);
    one.asks().get(PEOPLE).then().statusCode(404);
    one.asks().get("/api/v1/session").then().statusCode(200).body("households.size()", equalTo(0));
    People.KEEPER.asks().get(PEOPLE).then().body("people.id", not(hasItem(one.id()))).body("former.id", hasItem(one.id()));
  }

  @Test
  void who_left_is_known_by_name_and_comes_back_only_by_a_new_invitation() {
    Newcomer one = People.KEEPER.someoneNew();
    one.asks().delete(PEOPLE + "/" + one.id()).then().statusCode(204);
    List<String> names = People.KEEPER.asks().get("/api/v1/tanks").path("tanks.find { it.id == '" + People.TANK + "' }.keepers.name");
    assertThat(names).contains(one.name());
    role(People.STEWARD.asks(), one, "keeper").then().statusCode(404);
    String code = People.invitation(People.STEWARD, People.HOUSEHOLD, "guest");
    String session = one.asks().contentType(ContentType.JSON).body(Map.of("code", code)).post("/api/v1/join").then().statusCode(200)
        .extract().cookie(Signed.COOKIE);
    new Newcomer(one.id(), one.name(), session).asks().get(PEOPLE).then().statusCode(200)
        .body("people.find { it.id == '" + one.id() + "' }.role", equalTo("guest"))
        .body("invitations", nullValue());
  }

  @Test
  void what_was_tapped_on_a_shared_phone_before_its_keeper_left_is_sent_by_the_next_one() throws Exception {
    Newcomer one = People.KEEPER.someoneNew();
    People.STEWARD.asks().delete(PEOPLE + "/" + one.id()).then().statusCode(204);
    var tapped = Phone.feeding(UUID.randomUUID().toString(), People.TANK, UUID.randomUUID().toString(), 1, one.id());
    String batch = "{\"entries\":[" + tapped + "]}";
    one.asks().contentType(ContentType.JSON).body(batch).post("/api/v1/tanks/" + People.TANK + "/entries").then().statusCode(404);
    People.KEEPER.asks().contentType(ContentType.JSON).body(batch).post("/api/v1/tanks/" + People.TANK + "/entries").then()
        .statusCode(200).body("answers[0].outcome", equalTo("accepted"));
    var foreign = Phone.feeding(UUID.randomUUID().toString(), People.TANK, UUID.randomUUID().toString(), 1, "sunniva");
    People.KEEPER.asks().contentType(ContentType.JSON).body("{\"entries\":[" + foreign + "]}")
        .post("/api/v1/tanks/" + People.TANK + "/entries").then().body("answers[0].outcome", equalTo("refused"));
  }

  @Test
  void a_household_keeps_one_steward() {
    Newcomer first = founded();
    String people = "/api/v1/households/" + household(first) + "/people";
    first.asks().delete(people + "/" + first.id()).then().statusCode(409).body("kind", equalTo("last-steward"));
    first.asks().contentType(ContentType.JSON).body(Map.of("role", "guest")).put(people + "/" + first.id()).then().statusCode(409);
  }

  @Test
  void a_steward_hands_the_household_over_and_may_then_leave() {
    Newcomer first = founded();
    String household = household(first);
    Newcomer second = People.join(
        first.asks().contentType(ContentType.JSON).body(Map.of("role", "guest")).post("/api/v1/households/" + household + "/invitations").path("code"),
        "Heir " + UUID.randomUUID());
    String path = "/api/v1/households/" + household;
    first.asks().contentType(ContentType.JSON).body(Map.of("person", second.id())).post(path + "/hand-over").then().statusCode(204);
    second.asks().get(path + "/people").then().body("people.find { it.id == '" + second.id() + "' }.role", equalTo("steward"))
        .body("people.find { it.id == '" + first.id() + "' }.role", equalTo("keeper"))
        .body("changes[0].what", equalTo("handed_over"));
    first.asks().contentType(ContentType.JSON).body(Map.of("person", first.id())).post(path + "/hand-over").then().statusCode(403);
    first.asks().delete(path + "/people/" + first.id()).then().statusCode(204);
    second.asks().get(path + "/people").then().body("changes[0].what", equalTo("left"));
  }

  @Test
  void two_stewards_who_end_each_other_at_the_same_moment_leave_one() {
    for (int i = 0; i < 10; i++) {
      Newcomer first = founded();
      String path = "/api/v1/households/" + household(first);
      Newcomer second = People.join(
          first.asks().contentType(ContentType.JSON).body(Map.of("role", "steward")).post(path + "/invitations").path("code"), "Twin " + UUID.randomUUID());
      List<Integer> answers = Stream.of(
              CompletableFuture.supplyAsync(() -> first.asks().delete(path + "/people/" + first.id()).statusCode()),
              CompletableFuture.supplyAsync(() -> second.asks().delete(path + "/people/" + second.id()).statusCode()))
          .map(CompletableFuture::join).toList();
      assertThat(answers).containsExactlyInAnyOrder(204, 409);
    }
  }

  @Test
  void an_invitation_that_was_taken_back_lets_nobody_in() {
    String code = People.invitation(People.STEWARD, People.HOUSEHOLD, "guest");
    List<String> open = People.STEWARD.asks().get(PEOPLE).path("invitations.id");
    open.forEach(id -> People.STEWARD.asks().delete("/api/v1/households/" + People.HOUSEHOLD + "/invitations/" + id).then().statusCode(204));
    given().contentType(ContentType.JSON).body(Map.of("code", code, "name", "Too late " + UUID.randomUUID(), "password", People.A_PASSWORD))
        .post("/api/v1/join").then().statusCode(400).body("errors[0].field", equalTo("code"));
  }

  private Newcomer founded() {
    String name = "Founder " + UUID.randomUUID();
    Keeper keeper = households.found("House of " + name, name, People.A_PASSWORD, Instant.now()).keeper();
    assertThat(keeper).isNotNull();
    assertThat(store.memberships(keeper.id())).extracting(PeopleStore.Membership::role).containsExactly(Role.STEWARD);
    String session = given().contentType(ContentType.JSON).body(Map.of("name", name, "password", People.A_PASSWORD))
        .post("/api/v1/session").then().statusCode(200).extract().cookie(Signed.COOKIE);
    return new Newcomer(keeper.id(), name, session);
  }

  private String household(Newcomer steward) {
    return store.memberships(steward.id()).get(0).household();
  }

  private static Response role(RequestSpecification by, Newcomer about, String role) {
    return by.contentType(ContentType.JSON).body(Map.of("role", role)).put(PEOPLE + "/" + about.id());
  }

  private static Response push(Newcomer one) {
    return one.asks().contentType(ContentType.JSON).body("{\"entries\":[]}").post("/api/v1/tanks/" + People.TANK + "/entries");
  }
}
