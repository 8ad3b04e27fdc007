package provender.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import provender.Phone;

@QuarkusTest
class ExportImportTest {
  private static final String TANK = "/api/v1/tanks/" + People.TANK;

  private static Response brought(String lines) {
    return People.STEWARD.asks().contentType("text/plain; charset=UTF-8").body(lines).post(TANK + "/import");
  }

  private static String taken(String file) {
    return People.STEWARD.asks().get(TANK + "/" + file).then().statusCode(200).extract().asString();
  }

  private static ObjectNode feeding() {
    return Phone.feeding(UUID.randomUUID().toString(), People.TANK, UUID.randomUUID().toString(), 1, "teo");
  }

  @Test
  void what_was_taken_away_and_is_brought_back_changes_nothing() {
    String before = taken("export.jsonl");
    int lines = before.split("\n").length;
    assertThat(lines).isGreaterThan(400);
    brought(before).then().statusCode(200).body("accepted", equalTo(0)).body("known", equalTo(lines)).body("refused", empty());
    assertThat(taken("export.jsonl")).isEqualTo(before);
  }

  @Test
  void new_lines_are_kept_even_of_a_keeper_who_has_left_or_of_another_tank() {
    ObjectNode gone = feeding().put("by", "somebody-who-left").put("tank", "another-server");
    brought(gone + "\n\n").then().statusCode(200).body("accepted", equalTo(1)).body("refused", empty());
    assertThat(taken("export.jsonl")).contains(gone.path("id").asText());
    brought(gone + "\n").then().body("accepted", equalTo(0)).body("known", equalTo(1));
  }

  @Test
  void a_line_that_cannot_be_used_is_named_by_its_number_and_the_others_are_kept() {
    ObjectNode sound = feeding();
    ObjectNode odd = feeding().put("happenedAt", "yesterday");
    brought(sound + "\n{\"broken\n" + odd + "\n[1]\n").then().statusCode(200).body("accepted", equalTo(1))
        .body("refused.line", equalTo(java.util.List.of(2, 4, 3))).body("refused[0].errors.field", hasItem("line"))
        .body("refused[2].errors.field", hasItem("happenedAt"));
    assertThat(taken("export.jsonl")).contains(sound.path("id").asText()).doesNotContain(odd.path("id").asText());
  }

  @Test
  void the_table_has_a_line_for_each_food_and_no_text_runs_as_a_formula() {
    ObjectNode fed = feeding();
    fed.withObject("/body").put("note", "=HYPERLINK(\"x\"), said \"so\"");
    People.KEEPER.asks().contentType(ContentType.JSON).body("{\"entries\":[" + fed + "]}").post(TANK + "/entries").then().statusCode(200);
    String csv = taken("export.csv");
    assertThat(csv).startsWith("seq,id,kind,happenedAt,zone,by,receivedAt,food,grams,measure,count,supplements,fish,leftoverGrams,note,body\r\n");
    String line = csv.lines().filter(one -> one.contains(fed.path("id").asText())).findFirst().orElseThrow();
    double grams = fed.path("body").path("items").path(0).path("grams").asDouble();
    assertThat(line).contains("," + fed.path("body").path("items").path(0).path("food").asText() + "," + grams + ",");
    assertThat(line).contains("\"'=HYPERLINK(\"\"x\"\"), said \"\"so\"\"\"");
    assertThat(csv.split("\r\n").length).isGreaterThan(taken("export.jsonl").split("\n").length);
  }
}
