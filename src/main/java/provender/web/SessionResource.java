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
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.Operation;
import provender.people.Sessions;
import provender.people.Sessions.SignIn;

/** Signing in, asking who one is, signing out. */
@Path("/api/v1/session")
@Singleton
@Produces(MediaType.APPLICATION_JSON)
class SessionResource {
  private final Sessions sessions;
  private final Signed signed;
  private final SessionCookies cookies;

  SessionResource(Sessions sessions, Signed signed, SessionCookies cookies) {
    this.sessions = sessions;
    this.signed = signed;
    this.cookies = cookies;
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Sign in with name and password; the session is a cookie for 180 days")
  public Response signIn(String body, HttpServerRequest request) {
    JsonNode asked = Json.object(body);
    String address = request.remoteAddress() == null ? "" : request.remoteAddress().hostAddress();
    SignIn outcome =
        sessions.signIn(Asked.text(asked, "name"), Asked.text(asked, "password"), address, Asked.device(asked), Instant.now());
    if (outcome instanceof SignIn.SignedIn in) {
      return cookies.signedIn(in.keeper(), in.token(), request);
    }
    if (outcome instanceof SignIn.TooMany many) {
      long seconds = many.delay().toSeconds() + 1;
      throw Problem.tooMany("too many wrong passwords; try again in " + seconds + " seconds", seconds);
    }
    throw Problem.badRequest("name and password do not belong together", "password", "the password of this name");
  }

  @GET
  @Operation(summary = "Who is signed in; 401 when nobody is")
  public Map<String, Object> who() {
    return cookies.whoIs(signed.keeper());
  }

  @DELETE
  @Operation(summary = "Sign out; the session is gone at once")
  public Response signOut(HttpServerRequest request) {
    String token = signed.token();
    if (token != null && signed.known() != null) {
      sessions.signOut(token);
    }
    return cookies.signedOut(request);
  }
}
