package provender.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import provender.Phone;

@QuarkusTest
class EntriesTest {
  private final String device = UUID.randomUUID().toString();

  @Test
  void an_answer_that_was_lost_and_asked_for_again_leaves_one_entry() {
    ObjectNode entry = feeding();
    push(entry).then().body("answers[0].outcome", equalTo("accepted"));
    int seq = push(entry).then().body("answers[0].outcome", equalTo("duplicate")).extract().path("answers[0].seq");

    long stored = pulledSince(seq - 1).stream().filter(one -> one.get("id").equals(entry.path("id").asText())).count();
    assertThat(stored).isEqualTo(1);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "id|'NOT-A-UUID'|a UUID", "device|''|a UUID", "deviceSeq|0|a whole number from 1", "v|-1|a whole number from 1",
      "kind|'Feeding!'|a word of lower-case letters", "happenedAt|'yesterday'|a time with its offset",
      "tank|'another'|the tank it is sent to", "by|'bram'|the id of a keeper of this household", "body|7|an object"})
  void a_field_that_cannot_be_used_is_named_with_what_it_takes(String field, String value, String takes) {
    ObjectNode entry = feeding();
    if (value.matches("-?\\d+")) {
      entry.put(field, Integer.parseInt(value));
    } else {
      entry.put(field, value);
    }
    Response answer = push(entry);
    answer.then().statusCode(200).body("answers[0].outcome", equalTo("refused"))
        .body("answers[0].problem.errors.field", hasItem(field));
    assertThat(answer.jsonPath().getList("answers[0].problem.errors.takes", String.class))
        .anySatisfy(text -> assertThat(text).contains(takes));
  }

  @Test
  void a_place_or_a_time_of_arrival_that_the_phone_claims_is_not_believed() {
    ObjectNode entry = feeding();
    entry.put("seq", 999_999).put("receivedAt", "1999-01-01T00:00:00Z");
    int seq = push(entry).then().body("answers[0].outcome", equalTo("accepted")).extract().path("answers[0].seq");
    assertThat(seq).isLessThan(999_999);
    assertThat(pulledSince(seq - 1).get(0)).satisfies(stored -> {
      assertThat(stored.get("seq")).isEqualTo(seq);
      assertThat(String.valueOf(stored.get("receivedAt"))).doesNotStartWith("1999");
    });
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "no json", "[]", "{\"entries\":7}", "{\"entries\":[],\"entries\":[]}", "{\"entries\":[]} more", "{\"entries\""})
  void a_body_that_is_no_batch_is_refused_by_name(String body) {
    People.KEEPER.asks().contentType(ContentType.JSON).body(body).post("/api/v1/tanks/" + People.TANK + "/entries").then()
        .statusCode(400).contentType(Problem.MEDIA_TYPE)
        .body("errors.size()", equalTo(1));
  }

  @Test
  void too_much_at_once_is_refused_and_nothing_of_it_is_kept() {
    ObjectNode entry = feeding();
    entry.withObject("/body").put("note", "x".repeat(300_000));
    push(entry).then().statusCode(413);
    People.KEEPER.asks().contentType(ContentType.JSON)
        .body("{\"entries\":[" + "{},".repeat(500) + "{}]}")
        .post("/api/v1/tanks/" + People.TANK + "/entries").then().statusCode(400).body("errors[0].field", equalTo("entries"));
  }

  @Test
  void json_nested_beyond_all_sense_is_refused() {
    People.KEEPER.asks().contentType(ContentType.JSON)
        .body("{\"entries\":[" + "[".repeat(20_000) + "]".repeat(20_000) + "]}")
        .post("/api/v1/tanks/" + People.TANK + "/entries").then().statusCode(400);
  }

  @Test
  void another_content_type_is_refused() {
    People.KEEPER.asks().contentType(ContentType.TEXT).body("{\"entries\":[]}")
        .post("/api/v1/tanks/" + People.TANK + "/entries").then().statusCode(415);
  }

  @ParameterizedTest
  @CsvSource({"after,-1", "after,two", "limit,0", "limit,501"})
  void a_page_that_cannot_be_given_names_the_parameter(String parameter, String value) {
    People.KEEPER.asks().queryParam(parameter, value).get("/api/v1/tanks/" + People.TANK + "/entries").then()
        .statusCode(400).body("errors[0].field", equalTo(parameter));
  }

  @Test
  void the_list_of_tanks_names_the_keepers_so_that_a_phone_can_say_who_fed() {
    People.KEEPER.asks().get("/api/v1/tanks").then()
        .body("tanks[0].keepers.name", hasItem("Maren"))
        .body("tanks.household", org.hamcrest.Matchers.everyItem(equalTo("quernhaven")));
  }

  private java.util.List<Map<String, Object>> pulledSince(int after) {
    return People.KEEPER.asks().queryParam("after", after).get("/api/v1/tanks/" + People.TANK + "/entries")
        .jsonPath().getList("entries");
  }

  private ObjectNode feeding() {
    return Phone.feeding(UUID.randomUUID().toString(), People.TANK, device, 1, "teo");
  }

  private static Response push(ObjectNode entry) {
    return People.KEEPER.asks().contentType(ContentType.JSON).body("{\"entries\":[" + entry + "]}")
        .post("/api/v1/tanks/" + People.TANK + "/entries");
  }
}
