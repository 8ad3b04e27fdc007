package provender.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.vertx.core.http.HttpServerRequest;
import jakarta.inject.Singleton;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import provender.passkey.PasskeyStore.Kept;
import provender.passkey.Passkeys;
import provender.passkey.Place;
import provender.people.Households.Fault;
import provender.people.Keeper;
import provender.people.Sessions;

/** One's own passkeys: making, naming and removing them. */
@Path("/api/v1/passkeys")
@Singleton
@Produces(MediaType.APPLICATION_JSON)
class PasskeyResource {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final int PATIENCE_MILLIS = 300_000;

  private final Passkeys passkeys;
  private final Sessions sessions;
  private final Signed signed;

  PasskeyResource(Passkeys passkeys, Sessions sessions, Signed signed) {
    this.passkeys = passkeys;
    this.sessions = sessions;
    this.signed = signed;
  }

  @GET
  @Operation(summary = "The signed-in keeper's passkeys: name, the address each was made for, since when, last used")
  public String all() {
    ObjectNode answer = JSON.createObjectNode();
    ArrayNode list = answer.putArray("passkeys");
    passkeys.of(signed.keeper()).forEach(one -> list.add(shown(one)));
    return answer.toString();
  }

  @POST
  @Path("/options")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "What a browser needs to make a passkey (PublicKeyCredentialCreationOptions as JSON); takes the password once more",
      description = "409 with kind needs-name when the app is open under a bare number: browsers make passkeys for names only.")
  public String toMake(String body, HttpServerRequest request) {
    Keeper keeper = signed.keeper();
    Place place = Places.of(request);
    Instant now = Instant.now();
    List<Fault> faults = sessions.confirm(keeper, "password", Asked.text(Json.object(body), "password"), now);
    if (!faults.isEmpty()) {
      throw Problem.badFields(Asked.errors(faults));
    }
    ObjectNode options = JSON.createObjectNode();
    options.putObject("rp").put("id", place.name()).put("name", "Provender");
    options.putObject("user").put("id", handle(keeper)).put("name", keeper.name()).put("displayName", keeper.name());
    options.put("challenge", passkeys.challengeToMake(keeper, now)).put("timeout", PATIENCE_MILLIS).put("attestation", "none");
    ArrayNode algorithms = options.putArray("pubKeyCredParams");
    passkeys.algorithms().forEach(number -> algorithms.addObject().put("type", "public-key").put("alg", number));
    ArrayNode known = options.putArray("excludeCredentials");
    passkeys.of(keeper).forEach(one -> known.addObject().put("type", "public-key").put("id", one.credential()));
    options.putObject("authenticatorSelection")
        .put("residentKey", "required").put("requireResidentKey", true).put("userVerification", "required");
    return options.toString();
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Keep a passkey that the browser has made (RegistrationResponseJSON as credential), under a name")
  public String make(String body, HttpServerRequest request) {
    Keeper keeper = signed.keeper();
    JsonNode asked = Json.object(body);
    String name = name(asked);
    Kept made = passkeys.make(keeper, Places.of(request), asked.path("credential").toString(), name, Instant.now());
    if (made == null) {
      throw Problem.badRequest(
          "this passkey cannot be kept", "credential", "one made just now with the options given, not known yet; at most " + Passkeys.MOST + " a person");
    }
    return shown(made).toString();
  }

  @PUT
  @Path("/{passkey}")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Call one of one's own passkeys something else")
  public Response rename(@PathParam("passkey") String passkey, String body) {
    Keeper keeper = signed.keeper();
    return done(passkeys.rename(keeper, passkey, name(Json.object(body))));
  }

  @DELETE
  @Path("/{passkey}")
  @Operation(summary = "Remove one of one's own passkeys: nobody signs in with it any more; sessions go on until they are ended")
  public Response remove(@PathParam("passkey") String passkey) {
    return done(passkeys.remove(signed.keeper(), passkey));
  }

  private static Response done(boolean known) {
    if (!known) {
      throw Problem.notFound();
    }
    return Response.noContent().build();
  }

  private static ObjectNode shown(Kept one) {
    Instant used = one.usedAt();
    return JSON.createObjectNode()
        .put("id", one.id()).put("name", one.name()).put("place", one.place())
        .put("madeAt", one.madeAt().toString()).put("usedAt", used == null ? null : used.toString());
  }

  private static String name(JsonNode asked) {
    String name = Asked.text(asked, "name").strip();
    if (name.length() > Passkeys.LONGEST_NAME || name.chars().anyMatch(Character::isISOControl)) {
      throw Problem.badRequest("a field cannot be used", "name", "a name of 1 to " + Passkeys.LONGEST_NAME + " characters");
    }
    return name;
  }

  private static String handle(Keeper keeper) {
    return Base64.getUrlEncoder().withoutPadding().encodeToString(keeper.id().getBytes(StandardCharsets.UTF_8));
  }
}
