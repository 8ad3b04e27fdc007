package provender.web;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.runtime.StartupEvent;
import io.vertx.core.http.HttpServerRequest;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.Map;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.jboss.logging.Logger;
import provender.people.FirstStart;
import provender.people.Households;
import provender.people.PeopleStore;

/** Households: the first one, and their tanks. */
@Path("/api/v1")
@Singleton
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
class HouseholdResource {
  private static final Logger LOG = Logger.getLogger("provender.web");

  private final PeopleStore people;
  private final FirstStart firstStart;
  private final Signed signed;
  private final SessionCookies cookies;

  HouseholdResource(PeopleStore people, FirstStart firstStart, Signed signed, SessionCookies cookies) {
    this.people = people;
    this.firstStart = firstStart;
    this.signed = signed;
    this.cookies = cookies;
  }

  void tellTheCode(@Observes StartupEvent started) {
    if (firstStart.isOpen()) {
      LOG.info("no household yet: open the app and enter this code for the first steward: " + firstStart.code());
    }
  }

  @GET
  @Path("/first-start")
  @Operation(summary = "Whether this server still waits for its first steward")
  public Map<String, Object> isFirstStart() {
    return Map.of("open", firstStart.isOpen());
  }

  @POST
  @Path("/first-start")
  @Transactional
  @Operation(summary = "Make the first household with its steward; takes the code that the server printed on its console")
  public Response found(String body, HttpServerRequest request) {
    JsonNode asked = Json.object(body);
    Households.Entry entry =
        firstStart.found(
            Asked.text(asked, "code"), Asked.text(asked, "household"), Asked.text(asked, "name"), Asked.text(asked, "password"), Instant.now());
    return cookies.entered(entry, asked, request);
  }

  @POST
  @Path("/households/{household}/tanks")
  @Operation(summary = "One more tank, with the IANA time zone it stands in; stewards only")
  public Map<String, Object> addTank(@PathParam("household") String household, String body) {
    signed.stewardOf(household);
    JsonNode asked = Json.object(body);
    String id = UUID.randomUUID().toString();
    people.addTank(household, id, Asked.text(asked, "name").strip(), Asked.zone(asked));
    return Map.of("id", id);
  }
}
