package provender.web;

import jakarta.inject.Singleton;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.Operation;
import provender.contract.Calculation;
import provender.engine.node.MapNode;
import provender.engine.reference.Reference;
import provender.reference.ReferenceFiles;

/** Single calculations for anyone, without an account or a stored tank. */
@Path("/api/v1/calc")
@Singleton
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
class CalcResource {
  private final Reference reference = Reference.of(new MapNode(ReferenceFiles.onClasspath().read()));

  @POST
  @Path("/{name}")
  @Operation(
      summary = "One calculation: weight, food-energy, ration or meal-shares",
      description = "Units stand in the field names; answers carry low and high where a range is honest, and why.")
  public Map<String, Object> answer(@PathParam("name") String name, String body) {
    if (!Calculation.isKnown(name)) {
      throw Problem.notFound();
    }
    @SuppressWarnings("unchecked")
    Map<String, ?> input = (Map<String, ?>) Json.map(body);
    Map<String, Object> answer = Calculation.answer(name, new MapNode(input), reference);
    if (answer.get("errors") instanceof List<?> errors) {
      throw Problem.badFields(errors);
    }
    return answer;
  }
}
