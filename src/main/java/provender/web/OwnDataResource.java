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
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.jboss.logging.Logger;
import provender.people.Erasure;
import provender.people.Households.Fault;
import provender.people.Keeper;
import provender.people.PeopleStore;
import provender.people.Sessions;

/** What is kept about the signed-in keeper: to take along, and to take out. */
@Path("/api/v1/person")
@Singleton
@Produces(MediaType.APPLICATION_JSON)
class OwnDataResource {
  private static final Logger LOG = Logger.getLogger("provender.web");

  private final OwnData data;
  private final Erasure erasure;
  private final PeopleStore people;
  private final Sessions sessions;
  private final Signed signed;
  private final SessionCookies cookies;
  private final Optional<String> toErase;

  OwnDataResource(
      OwnData data,
      Erasure erasure,
      PeopleStore people,
      Sessions sessions,
      Signed signed,
      SessionCookies cookies,
      @ConfigProperty(name = "provender.erase") Optional<String> toErase) {
    this.data = data;
    this.erasure = erasure;
    this.people = people;
    this.sessions = sessions;
    this.signed = signed;
    this.cookies = cookies;
    this.toErase = toErase;
  }

  /** For a person who asks whoever runs the server, because they cannot sign in. */
  void eraseAsTold(@Observes StartupEvent started) {
    if (toErase.isEmpty()) {
      return;
    }
    PeopleStore.Account account = people.account(toErase.get());
    if (account == null) {
      LOG.warn("provender.erase names nobody on this server");
      return;
    }
    Erasure.Outcome outcome = erasure.erase(account.keeper(), Instant.now());
    LOG.info(outcome.neutralName() == null
        ? "not erased: the household " + outcome.needsSteward() + " would have no steward; make someone else one first"
        : "erased; their entries stand under the name " + outcome.neutralName() + " now");
  }

  @GET
  @Path("/export.json")
  @Operation(
      summary = "All that is kept about the signed-in keeper, as JSON",
      description =
          "Name, mail address, households, phones, passkeys, changes they made or that were about them, and every entry they recorded, in every household"
              + " they belong or belonged to. A journal that is damaged is named in damagedTanks.")
  public Response export() {
    String text = data.of(signed.keeper(), Instant.now()).toPrettyString();
    return Response.ok(text.getBytes(StandardCharsets.UTF_8))
        .header("Content-Disposition", "attachment; filename=\"my-data.json\"")
        .build();
  }

  @POST
  @Path("/erasure")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Take the signed-in keeper out of the records; takes the password once more",
      description =
          "Their name becomes a neutral one, every way in is removed, and every membership ends. Their entries stay. 409 with kind"
              + " last-steward when a household with others in it would have no steward.")
  public Response erase(String body, HttpServerRequest request) {
    Keeper keeper = signed.keeper();
    JsonNode asked = Json.object(body);
    Instant now = Instant.now();
    List<Fault> faults = sessions.confirm(keeper, "password", Asked.text(asked, "password"), now);
    if (!faults.isEmpty()) {
      throw Problem.badFields(Asked.errors(faults));
    }
    if (erasure.erase(keeper, now).neutralName() == null) {
      throw Problem.conflict("last-steward", "a household keeps one steward: make someone else a steward first");
    }
    return cookies.signedOut(request);
  }
}
