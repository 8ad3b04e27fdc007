package provender.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.startsWith;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@QuarkusTest
class CalculationsTest {
  private static final List<String> CALLS =
      List.of("weight", "growth", "food-energy", "ration", "meal-shares", "selectivity", "diet-balance", "drops", "portions", "nutrients");

  @Test
  void every_example_of_the_description_is_answered_with_its_reasons() {
    Map<String, Map<String, ?>> examples = given().accept(ContentType.JSON).get("/api/v1/openapi?format=json")
        .path("paths.'/api/v1/calc/{name}'.post.requestBody.content.'application/json'.examples");
    assertThat(examples.keySet()).containsAll(CALLS);
    examples.forEach((name, example) -> {
      Response answer = ask(name.split(" ")[0], example.get("value"));
      answer.then().statusCode(200);
      assertThat(answer.jsonPath().getList("why")).as(name).isNotEmpty();
    });
  }

  @Test
  void asked_to_say_it_the_server_explains_in_words_with_the_source_in_full() {
    given().contentType(ContentType.JSON).queryParam("say", "en").body(CalcExamples.WEIGHT).post("/api/v1/calc/weight")
        .then().statusCode(200).body("inWords[-1]", startsWith("Mass from length:")).body("inWords[-1]", containsString("Source read: "));
    given().contentType(ContentType.JSON).queryParam("say", "de").body(CalcExamples.WEIGHT).post("/api/v1/calc/weight")
        .then().statusCode(200).body("inWords[-1]", startsWith("Masse aus der Länge:")).body("inWords[-1]", containsString("Quelle gelesen: "));
    given().contentType(ContentType.JSON).queryParam("say", "xx").body(CalcExamples.WEIGHT).post("/api/v1/calc/weight")
        .then().statusCode(400).body("errors.field", hasItems("say"));
  }

  @Test
  void a_calculation_nobody_knows_is_not_found() {
    ask("horoscope", Map.of()).then().statusCode(404).contentType(Problem.MEDIA_TYPE);
  }

  @Test
  void nothing_at_all_names_every_field_that_is_needed() {
    ask("drops", Map.of()).then().statusCode(400).body("errors.field", hasItems("weighingsGrams"));
    ask("growth", Map.of()).then().statusCode(400).body("errors.field", hasItems("lInfCm", "kPerYear", "a", "b", "lengthCm", "days"));
    ask("selectivity", Map.of()).then().statusCode(400).body("errors.field", hasItems("offered", "eaten"));
    ask("diet-balance", Map.of()).then().statusCode(400).body("errors.field", hasItems("guild", "lastDay", "intake"));
    ask("ration", Map.of()).then().statusCode(400).body("errors.field", hasItems("temperatureC", "fish"));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "drops|{\"weighingsGrams\":[0.5,60]}|weighingsGrams", "drops|{\"weighingsGrams\":[0.5,0]}|weighingsGrams[1]",
      "drops|{\"weighingsGrams\":[0.5,-1]}|weighingsGrams[1]", "drops|{\"weighingsGrams\":[0.5]}|weighingsGrams",
      "drops|{\"weighingsGrams\":[0.5,0.6],\"dropsPerWeighing\":0}|dropsPerWeighing",
      "drops|{\"weighingsGrams\":[0.5,0.6],\"dropsPerWeighing\":1.5}|dropsPerWeighing",
      "selectivity|{\"offered\":[1,2],\"eaten\":[1,3]}|eaten[1]", "selectivity|{\"offered\":[1,2],\"eaten\":[0,0]}|eaten",
      "selectivity|{\"offered\":[1,2],\"eaten\":[1]}|eaten",
      "growth|{\"lInfCm\":19,\"kPerYear\":1,\"a\":0.02,\"b\":3,\"lengthCm\":19,\"days\":1}|lengthCm",
      "growth|{\"lInfCm\":19,\"kPerYear\":1,\"a\":0.02,\"b\":3,\"lengthCm\":0,\"days\":1}|lengthCm",
      "ration|{\"temperatureC\":26,\"model\":{\"name\":\"guesswork\"},\"fish\":[{\"id\":\"a\",\"weightGrams\":1}]}|model.name",
      "ration|{\"temperatureC\":26,\"model\":{\"name\":\"barramundi\",\"growing\":true},\"fish\":[{\"id\":\"a\",\"weightGrams\":1}]}|model.growing",
      "ration|{\"temperatureC\":26,\"fish\":[{\"id\":\"a\",\"weightGrams\":1,\"conditionScore\":6}]}|fish[0].conditionScore",
      "ration|{\"temperatureC\":26,\"fish\":[{\"id\":\"a\",\"weightGrams\":1,\"colour\":\"red\"}]}|fish[0].colour",
      "food-energy|{\"waterGrams\":60,\"proteinGrams\":40,\"fatGrams\":10}|waterGrams",
      "portions|{\"targetGrams\":3,\"feeders\":[{\"id\":\"a\",\"gramsPerDrop\":0,\"times\":[\"08:00\"]}]}|feeders[0].gramsPerDrop",
      "portions|{\"targetGrams\":-3,\"feeders\":[]}|targetGrams", "portions|{\"targetGrams\":3,\"feeders\":[]}|feeders",
      "portions|{\"targetGrams\":3,\"feeders\":[{\"id\":\"a\",\"gramsPerDrop\":0.5,\"times\":[\"8 am\"]}]}|feeders[0].times",
      "portions|{\"targetGrams\":3,\"feeders\":[{\"id\":\"a\",\"gramsPerDrop\":0.5,\"times\":[\"08:00\"],\"minDrops\":3,\"maxDrops\":2}]}|feeders[0].minDrops",
      "portions|{\"targetGrams\":3,\"feeders\":[{\"id\":\"a\",\"gramsPerDrop\":0.5,\"times\":[\"08:00\"]},{\"id\":\"a\",\"gramsPerDrop\":0.5,\"times\":[\"08:00\"]}]}|feeders[1].id",
      "nutrients|{\"volumeLitres\":0,\"feeds\":[{\"gramsPerDay\":1,\"proteinFraction\":0.4,\"phosphorusFraction\":0.01}]}|volumeLitres",
      "nutrients|{\"volumeLitres\":10,\"feeds\":[{\"gramsPerDay\":1,\"proteinFraction\":45,\"phosphorusFraction\":0.01}]}|feeds[0].proteinFraction",
      "nutrients|{\"volumeLitres\":10,\"feeds\":[{\"gramsPerDay\":1,\"proteinFraction\":0.4,\"phosphorusFraction\":0.01}],\"retention\":{\"n\":2}}|retention.n",
      "nutrients|{\"volumeLitres\":10,\"feeds\":[{\"gramsPerDay\":1,\"proteinFraction\":0.4,\"phosphorusFraction\":0.01}],\"exchange\":{\"fraction\":20}}|exchange.fraction",
      "diet-balance|{\"guild\":\"turf_grazer\",\"lastDay\":\"soon\",\"intake\":[{\"date\":\"2026-06-28\",\"food\":\"nori_dried\",\"dryMatterGrams\":2}]}|lastDay",
      "diet-balance|{\"guild\":\"turf_grazer\",\"lastDay\":\"2026-06-28\",\"intake\":[{\"date\":\"2026-06-28\",\"components\":{\"algae\":0.7,\"fish\":0.7},\"dryMatterGrams\":2}]}|intake[0].components.other"})
  void a_field_that_cannot_be_used_is_named(String call, String body, String field) {
    given().contentType(ContentType.JSON).body(body).post("/api/v1/calc/" + call).then().statusCode(400)
        .contentType(Problem.MEDIA_TYPE).body("errors.field", hasItems(field));
  }

  @Test
  void a_list_that_is_far_too_long_is_refused_by_name() {
    List<Integer> endless = new ArrayList<>(java.util.Collections.nCopies(150_000, 1));
    ask("drops", Map.of("weighingsGrams", endless)).then().statusCode(400).body("errors[0].field", equalTo("weighingsGrams"));
  }

  private static Response ask(String name, Object body) {
    return given().contentType(ContentType.JSON).body(body).post("/api/v1/calc/" + name);
  }
}
