package provender.web;

import jakarta.inject.Singleton;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.jspecify.annotations.Nullable;
import provender.contract.Calculation;
import provender.engine.node.MapNode;
import provender.engine.reference.Reference;
import provender.reference.ReferenceFiles;
import provender.report.WhyInWords;

/** Single calculations for anyone, without an account or a stored tank. */
@Path("/api/v1/calc")
@Singleton
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
class CalcResource {
  private final Map<String, List<Map<String, Object>>> tables = ReferenceFiles.onClasspath().read();
  private final Reference reference = Reference.of(new MapNode(tables));

  @POST
  @Path("/{name}")
  @Operation(
      summary = "One calculation: weight, growth, food-energy, ration, meal-shares, selectivity, diet-balance, drops, portions or nutrients",
      description =
          "Units stand in the field names. Answers carry low and high where a range is honest, and why: steps with formula,"
              + " inputs and source. Lists hold at most 10,000 items. A field that cannot be used is answered with 400 and a"
              + " problem (RFC 9457) whose errors name it and what it takes; a field that is not known is one of them. With sensitivity: true the five"
              + " calculations of one figure say how much it would change if each number were a tenth larger. With ?say=en or ?say=de the answer"
              + " has inWords too: why in sentences, one paragraph a step, each source cited in full.")
  @RequestBody(
      content =
          @Content(
              mediaType = MediaType.APPLICATION_JSON,
              schema = @Schema(type = SchemaType.OBJECT),
              examples = {
                @ExampleObject(name = "weight", value = CalcExamples.WEIGHT),
                @ExampleObject(name = "growth", value = CalcExamples.GROWTH),
                @ExampleObject(name = "food-energy", value = CalcExamples.FOOD_ENERGY),
                @ExampleObject(name = "ration", value = CalcExamples.RATION),
                @ExampleObject(name = "ration by a published line", value = CalcExamples.PUBLISHED_RATION),
                @ExampleObject(name = "meal-shares", value = CalcExamples.MEAL_SHARES),
                @ExampleObject(name = "selectivity", value = CalcExamples.SELECTIVITY),
                @ExampleObject(name = "diet-balance", value = CalcExamples.DIET_BALANCE),
                @ExampleObject(name = "drops", value = CalcExamples.DROPS),
                @ExampleObject(name = "portions", value = CalcExamples.PORTIONS),
                @ExampleObject(name = "nutrients", value = CalcExamples.NUTRIENTS)
              }))
  @APIResponse(responseCode = "200", description = "The answer, with why")
  @APIResponse(responseCode = "400", description = "A problem that names each bad field and what it takes")
  public Map<String, Object> answer(@PathParam("name") String name, @QueryParam("say") @Nullable String language, String body) {
    if (!Calculation.isKnown(name)) {
      throw Problem.notFound();
    }
    @SuppressWarnings("unchecked")
    Map<String, ?> input = (Map<String, ?>) Json.map(body);
    Map<String, Object> answer = Calculation.answer(name, new MapNode(input), reference);
    if (answer.get("errors") instanceof List<?> errors) {
      throw Problem.badFields(errors);
    }
    return language == null ? answer : withWords(answer, language);
  }

  private Map<String, Object> withWords(Map<String, Object> answer, String language) {
    WhyInWords words =
        WhyInWords.in(language, tables)
            .orElseThrow(() -> Problem.badFields(List.of(Map.of("field", "say", "takes", "a language there is a text for: en or de"))));
    Map<String, Object> said = new LinkedHashMap<>(answer);
    said.put("inWords", words.of(answer));
    return said;
  }
}
