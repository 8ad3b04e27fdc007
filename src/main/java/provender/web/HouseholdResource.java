package provender.web;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.runtime.StartupEvent;
import io.vertx.core.http.HttpServerRequest;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.jboss.logging.Logger;
import provender.people.FirstStart;
import provender.people.Households;
import provender.people.Keeper;
import provender.people.PeopleStore;
import provender.people.Role;

/** Households: the first one, who is let in, and their tanks. */
@Path("/api/v1")
@Singleton
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
class HouseholdResource {
  private static final Logger LOG = Logger.getLogger("provender.web");
  private static final int LONGEST = 200;

  private final PeopleStore people;
  private final Households households;
  private final FirstStart firstStart;
  private final Signed signed;
  private final SessionCookies cookies;

  HouseholdResource(PeopleStore people, Signed signed, SessionCookies cookies) {
    this.people = people;
    this.households = new Households(people);
    this.firstStart = new FirstStart(people);
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
  @Operation(summary = "Make the first household with its steward; takes the code that the server printed on its console")
  public Response found(String body, HttpServerRequest request) {
    JsonNode asked = Json.object(body);
    return entered(
        firstStart.found(text(asked, "code"), text(asked, "household"), text(asked, "name"), text(asked, "password")), request);
  }

  @POST
  @Path("/households/{household}/invitations")
  @Operation(summary = "A code that lets one person in, once, within seven days; stewards only")
  public Map<String, Object> invite(@PathParam("household") String household, String body) {
    signed.stewardOf(household);
    Instant now = Instant.now();
    String code = households.invite(household, role(text(Json.object(body), "role")), now);
    return Map.of("code", code, "expiresAt", now.plus(Households.INVITATION_LASTS).toString());
  }

  @POST
  @Path("/join")
  @Operation(summary = "Follow an invitation: with name and password as someone new, or signed in with the code alone")
  public Response join(String body, HttpServerRequest request) {
    JsonNode asked = Json.object(body);
    String code = text(asked, "code");
    if (!asked.has("name")) {
      return entered(households.join(code, signed.keeper(), Instant.now()), request);
    }
    return entered(households.join(code, text(asked, "name"), text(asked, "password"), Instant.now()), request);
  }

  @POST
  @Path("/households/{household}/tanks")
  @Operation(summary = "One more tank, with the IANA time zone it stands in; stewards only")
  public Map<String, Object> addTank(@PathParam("household") String household, String body) {
    signed.stewardOf(household);
    JsonNode asked = Json.object(body);
    String id = UUID.randomUUID().toString();
    people.addTank(household, id, text(asked, "name").strip(), zone(text(asked, "zone")));
    return Map.of("id", id);
  }

  private Response entered(Households.Entry entry, HttpServerRequest request) {
    Keeper keeper = entry.keeper();
    if (keeper == null) {
      throw Problem.badFields(
          entry.faults().stream().map(fault -> Map.of("field", fault.field(), "takes", fault.takes())).toList());
    }
    return cookies.signedIn(keeper, request);
  }

  private static Role role(String text) {
    for (Role role : List.of(Role.GUEST, Role.KEEPER, Role.STEWARD)) {
      if (role.name().toLowerCase(Locale.ROOT).equals(text)) {
        return role;
      }
    }
    throw Problem.badRequest("a field cannot be used", "role", "guest, keeper or steward");
  }

  private static String zone(String text) {
    try {
      return ZoneId.of(text).getId();
    } catch (DateTimeException unknown) {
      throw Problem.badRequest("a field cannot be used", "zone", "an IANA time zone such as Europe/Berlin");
    }
  }

  private static String text(JsonNode asked, String field) {
    String text = asked.path(field).isTextual() ? asked.path(field).asText() : "";
    if (text.isBlank() || text.length() > LONGEST) {
      throw Problem.badRequest("a field is missing", field, "a text of 1 to 200 characters");
    }
    return text;
  }
}
