package provender.web;

import com.fasterxml.jackson.databind.JsonNode;
import io.vertx.core.http.HttpServerRequest;
import jakarta.inject.Singleton;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.Operation;
import provender.people.Keeper;
import provender.people.PeopleStore;
import provender.people.Sessions;
import provender.people.Sessions.SignIn;

/** Signing in, asking who one is, signing out. */
@Path("/api/v1/session")
@Singleton
@Produces(MediaType.APPLICATION_JSON)
class SessionResource {
  private final Sessions sessions;
  private final PeopleStore people;
  private final Signed signed;

  SessionResource(PeopleStore people, Signed signed) {
    this.sessions = new Sessions(people);
    this.people = people;
    this.signed = signed;
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Sign in with name and password; the session is a cookie for 180 days")
  public Response signIn(String body, HttpServerRequest request) {
    JsonNode asked = Json.object(body);
    String address = request.remoteAddress() == null ? "" : request.remoteAddress().hostAddress();
    SignIn outcome = sessions.signIn(text(asked, "name"), text(asked, "password"), address, Instant.now());
    if (outcome instanceof SignIn.SignedIn in) {
      return Response.ok(whoIs(in.keeper())).cookie(cookie(in.token(), (int) Sessions.LASTS.toSeconds(), request)).build();
    }
    if (outcome instanceof SignIn.TooMany many) {
      throw Problem.tooMany("too many wrong passwords; try again in " + (many.delay().toSeconds() + 1) + " seconds");
    }
    throw Problem.badRequest("name and password do not belong together", "password", "the password of this name");
  }

  @GET
  @Operation(summary = "Who is signed in; 401 when nobody is")
  public Map<String, Object> who() {
    return whoIs(signed.keeper());
  }

  @DELETE
  @Operation(summary = "Sign out; the session is gone at once")
  public Response signOut(HttpServerRequest request) {
    String token = signed.token();
    if (token != null) {
      sessions.signOut(token);
    }
    return Response.noContent().cookie(cookie("", 0, request)).build();
  }

  private Map<String, Object> whoIs(Keeper keeper) {
    List<Map<String, String>> households =
        people.memberships(keeper.id()).stream()
            .map(one -> Map.of("id", one.household(), "name", one.name(), "role", lower(one.role().name())))
            .toList();
    return Map.of("keeper", Map.of("id", keeper.id(), "name", keeper.name()), "households", households);
  }

  static String lower(String role) {
    return role.toLowerCase(Locale.ROOT);
  }

  private static String text(JsonNode asked, String field) {
    JsonNode value = asked.path(field);
    if (!value.isTextual() || value.asText().isEmpty() || value.asText().length() > 200) {
      throw Problem.badRequest("a field is missing", field, "a text of 1 to 200 characters");
    }
    return value.asText();
  }

  private static NewCookie cookie(String token, int seconds, HttpServerRequest request) {
    return new NewCookie.Builder(Signed.COOKIE)
        .value(token)
        .path("/")
        .httpOnly(true)
        .secure(request.isSSL())
        .sameSite(NewCookie.SameSite.STRICT)
        .maxAge(seconds)
        .build();
  }
}
