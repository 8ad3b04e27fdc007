package provender.web;

import com.fasterxml.jackson.databind.JsonNode;
import io.vertx.core.http.HttpServerRequest;
import jakarta.inject.Singleton;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import provender.people.Households;
import provender.people.Keeper;
import provender.people.PeopleStore;
import provender.people.Sessions;

/** What a browser is given when someone comes in or leaves. */
@Singleton
class SessionCookies {
  private final PeopleStore people;
  private final Sessions sessions;
  private final boolean https;
  private final Signed signed;

  SessionCookies(PeopleStore people, Sessions sessions, Signed signed, @ConfigProperty(name = "provender.https") boolean https) {
    this.signed = signed;
    this.people = people;
    this.sessions = sessions;
    this.https = https;
  }

  /** Opens a session for someone who has just shown who they are. */
  Response signedIn(Keeper keeper, JsonNode asked, HttpServerRequest request) {
    return signedIn(keeper, sessions.open(keeper, Asked.device(asked), Instant.now()), request);
  }

  /** The same for whoever came in as {@code entry} says, or the fields that stood in the way. */
  Response entered(Households.Entry entry, JsonNode asked, HttpServerRequest request) {
    Keeper keeper = entry.keeper();
    if (keeper == null) {
      throw Problem.badFields(Asked.errors(entry.faults()));
    }
    return signedIn(keeper, asked, request);
  }

  /** A browser has one session: the one it came with ends, whosever it was. */
  Response signedIn(Keeper keeper, String token, HttpServerRequest request) {
    String before = signed.token();
    if (before != null) {
      sessions.signOut(before);
    }
    signed.isNow(keeper);
    return Response.ok(whoIs(keeper)).cookie(cookie(token, (int) Sessions.LASTS.toSeconds(), request)).build();
  }

  Response signedOut(HttpServerRequest request) {
    return Response.noContent().cookie(cookie("", 0, request)).build();
  }

  Map<String, Object> whoIs(Keeper keeper) {
    List<Map<String, String>> households =
        people.memberships(keeper.id()).stream()
            .map(one -> Map.of("id", one.household(), "name", one.name(), "role", lower(one.role().name())))
            .toList();
    return Map.of("keeper", Map.of("id", keeper.id(), "name", keeper.name()), "households", households);
  }

  static String lower(String role) {
    return role.toLowerCase(Locale.ROOT);
  }

  private NewCookie cookie(String token, int seconds, HttpServerRequest request) {
    return new NewCookie.Builder(Signed.cookie(https, request))
        .value(token)
        .path("/")
        .httpOnly(true)
        .secure(https || request.isSSL())
        .sameSite(NewCookie.SameSite.STRICT)
        .maxAge(seconds)
        .build();
  }
}
