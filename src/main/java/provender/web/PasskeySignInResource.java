package provender.web;

import com.fasterxml.jackson.databind.JsonNode;
import io.vertx.core.http.HttpServerRequest;
import jakarta.inject.Singleton;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.Operation;
import provender.passkey.Passkeys;
import provender.people.Keeper;

/** Signing in with a passkey, without a name or a password. */
@Path("/api/v1/session/passkey")
@Singleton
@Produces(MediaType.APPLICATION_JSON)
class PasskeySignInResource {
  private static final int PATIENCE_MILLIS = 300_000;

  private final Passkeys passkeys;
  private final SessionCookies cookies;

  PasskeySignInResource(Passkeys passkeys, SessionCookies cookies) {
    this.passkeys = passkeys;
    this.cookies = cookies;
  }

  @POST
  @Path("/options")
  @Operation(summary = "What a browser needs to sign in with a passkey (PublicKeyCredentialRequestOptions as JSON); names nobody")
  public Map<String, Object> toUse(HttpServerRequest request) {
    return Map.of(
        "challenge", passkeys.challengeToUse(Instant.now()),
        "rpId", Places.of(request).name(),
        "allowCredentials", List.of(),
        "userVerification", "required",
        "timeout", PATIENCE_MILLIS);
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Sign in with a passkey (AuthenticationResponseJSON as credential); the session is a cookie for 180 days")
  public Response signIn(String body, HttpServerRequest request) {
    JsonNode asked = Json.object(body);
    Keeper keeper = passkeys.use(Places.of(request), asked.path("credential").toString(), Instant.now());
    if (keeper == null) {
      throw Problem.badRequest("this passkey opens nothing here", "credential", "a passkey that was made at this address and not removed");
    }
    return cookies.signedIn(keeper, asked, request);
  }
}
