package provender.web;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.runtime.StartupEvent;
import io.vertx.core.http.HttpServerRequest;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.jboss.logging.Logger;
import provender.passkey.Passkeys;
import provender.people.Households;
import provender.people.Keeper;
import provender.people.Members;
import provender.people.Resets;

/** A new password for who forgot theirs. */
@Path("/api/v1")
@Singleton
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
class ResetResource {
  private static final Logger LOG = Logger.getLogger("provender.web");

  private final Resets resets;
  private final Members members;
  private final Passkeys passkeys;
  private final Signed signed;
  private final SessionCookies cookies;
  private final Optional<String> forgot;

  ResetResource(
      Resets resets, Members members, Passkeys passkeys, Signed signed, SessionCookies cookies, @ConfigProperty(name = "provender.reset") Optional<String> forgot) {
    this.resets = resets;
    this.members = members;
    this.passkeys = passkeys;
    this.signed = signed;
    this.cookies = cookies;
    this.forgot = forgot;
  }

  /** Whoever sits at the server can help a steward whom nobody else may help. */
  void tellTheCode(@Observes StartupEvent started) {
    String code = forgot.map(name -> resets.make(name, Instant.now())).orElse(null);
    if (code != null) {
      LOG.info("to choose a new password, once and within a day, open the app at /#/reset/" + code);
    } else if (forgot.isPresent()) {
      LOG.warn("provender.reset names nobody on this server");
    }
  }

  @POST
  @Path("/households/{household}/people/{person}/reset")
  @Consumes(MediaType.WILDCARD)
  @Operation(
      summary = "A code with which someone chooses a new password, once, within a day; stewards only",
      description = "403 with kind elsewhere-too when the person also belongs to a household that this steward does not look after.")
  public Map<String, Object> make(@PathParam("household") String household, @PathParam("person") String person) {
    Keeper steward = signed.stewardOf(household);
    if (!members.belongs(household, person)) {
      throw Problem.notFound();
    }
    Instant now = Instant.now();
    String code = resets.make(household, steward, person, now);
    if (code == null) {
      throw Problem.notAllowed("elsewhere-too", "this person belongs to more than your households; whoever runs the server can help them");
    }
    return Map.of("code", code, "expiresAt", now.plus(Resets.LASTS).toString());
  }

  @POST
  @Transactional
  @Path("/reset")
  @Operation(summary = "Choose a new password with such a code; signs in, signs every other phone out, and removes every passkey")
  public Response follow(String body, HttpServerRequest request) {
    JsonNode asked = Json.object(body);
    Households.Entry entry = resets.follow(Asked.text(asked, "code"), Asked.text(asked, "password"), Instant.now());
    Keeper keeper = entry.keeper();
    if (keeper != null) {
      passkeys.removeAll(keeper);
    }
    return cookies.entered(entry, asked, request);
  }
}
