package provender.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.inject.Singleton;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import provender.people.Households.Fault;
import provender.people.Keeper;
import provender.people.Sessions;
import provender.people.Sessions.Device;

/** One's own phones that are signed in, and one's own password. */
@Path("/api/v1/session")
@Singleton
@Produces(MediaType.APPLICATION_JSON)
class DeviceResource {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Sessions sessions;
  private final Signed signed;

  DeviceResource(Sessions sessions, Signed signed) {
    this.sessions = sessions;
    this.signed = signed;
  }

  @GET
  @Path("/devices")
  @Operation(summary = "Where the signed-in keeper is signed in: since when, and when it was last used (to ten minutes)")
  public String devices() {
    Keeper keeper = signed.keeper();
    ObjectNode answer = JSON.createObjectNode();
    answer.putArray("devices");
    for (Device device : sessions.devices(keeper, token(), Instant.now())) {
      ObjectNode one = answer.withArray("devices").addObject();
      one.put("id", device.id()).put("name", device.name()).put("openedAt", device.openedAt().toString());
      Instant used = device.lastUsedAt();
      one.put("lastUsedAt", used == null ? null : used.toString()).put("asking", device.asking());
    }
    return answer.toString();
  }

  @DELETE
  @Path("/devices/{device}")
  @Operation(summary = "Sign one of one's own phones out; it keeps what it has not sent until someone signs in on it")
  public Response end(@PathParam("device") String device) {
    if (!sessions.end(signed.keeper(), device)) {
      throw Problem.notFound();
    }
    return Response.noContent().build();
  }

  @DELETE
  @Path("/devices")
  @Operation(summary = "Sign every phone of one's own out but the one that asks")
  public Response endOthers() {
    sessions.endOthers(signed.keeper(), token());
    return Response.noContent().build();
  }

  @POST
  @Transactional
  @Path("/password")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Change one's own password, with the old one; signs every other phone out")
  public Response changePassword(String body) {
    Keeper keeper = signed.keeper();
    JsonNode asked = Json.object(body);
    List<Fault> faults =
        sessions.changePassword(keeper, token(), Asked.text(asked, "old"), Asked.text(asked, "password"), Instant.now());
    if (!faults.isEmpty()) {
      throw Problem.badFields(Asked.errors(faults));
    }
    return Response.noContent().build();
  }

  private String token() {
    String token = signed.token();
    if (token == null) {
      throw Problem.signInNeeded();
    }
    return token;
  }
}
