package provender.web;

import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.RequestScoped;
import jakarta.ws.rs.core.Cookie;
import jakarta.ws.rs.core.HttpHeaders;
import java.time.Instant;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jspecify.annotations.Nullable;
import provender.people.Keeper;
import provender.people.PeopleStore;
import provender.people.Role;
import provender.people.Seat;
import provender.people.Sessions;

/** Who is asking, and what they may touch. */
@RequestScoped
class Signed {
  static final String COOKIE = "provender";

  /** Browsers take a cookie of this name only over https, for this host alone, and from no subdomain. */
  static final String COOKIE_OVER_HTTPS = "__Host-provender";

  private final Sessions sessions;
  private final PeopleStore people;
  private final HttpHeaders headers;
  private final String cookie;
  private final RoutingContext request;
  private final Rates rates;
  private @Nullable Keeper keeper;

  Signed(
      PeopleStore people,
      Sessions sessions,
      HttpHeaders headers,
      RoutingContext request,
      Rates rates,
      @ConfigProperty(name = "provender.https") boolean https) {
    this.sessions = sessions;
    this.people = people;
    this.headers = headers;
    this.cookie = cookie(https, request.request());
    this.request = request;
    this.rates = rates;
  }

  /** The cookie's name for a phone that came over https, be it by a proxy; a plain one opens nothing there. */
  static String cookie(boolean https, HttpServerRequest request) {
    return https || request.isSSL() ? COOKIE_OVER_HTTPS : COOKIE;
  }

  @Nullable String token() {
    Cookie sent = headers.getCookies().get(cookie);
    return sent == null ? null : sent.getValue();
  }

  /** Who is asking, or null for someone who is not signed in. */
  @Nullable Keeper known() {
    String token = token();
    if (keeper == null && token != null) {
      keeper = sessions.keeper(token, Instant.now());
      if (keeper != null) {
        isNow(keeper);
        rates.person(keeper.id());
      }
    }
    return keeper;
  }

  Keeper keeper() {
    Keeper known = known();
    if (known == null) {
      throw Problem.signInNeeded();
    }
    return known;
  }

  /** Lets the audit log say whose request this turned out to be. */
  void isNow(Keeper whose) {
    request.put(AuditLog.KEEPER, whose.id());
  }

  /** The keeper's seat at a tank; a tank of strangers is as unknown as one that does not exist. */
  Seat seat(String tank) {
    for (Seat seat : people.seats(keeper().id())) {
      if (seat.tank().equals(tank)) {
        rates.household(seat.household());
        return seat;
      }
    }
    throw Problem.notFound();
  }

  /** Refuses everyone who does not belong; a household of strangers is as unknown as one that does not exist. */
  PeopleStore.Membership memberOf(String household) {
    for (PeopleStore.Membership membership : people.memberships(keeper().id())) {
      if (membership.household().equals(household)) {
        rates.household(household);
        return membership;
      }
    }
    throw Problem.notFound();
  }

  /** Refuses everyone but a steward. */
  Keeper stewardOf(String household) {
    if (memberOf(household).role() != Role.STEWARD) {
      throw Problem.notAllowed("steward-only", "only a steward of the household may do this");
    }
    return keeper();
  }

  Seat seatToRecord(String tank) {
    Seat seat = seat(tank);
    if (seat.role() == Role.GUEST) {
      throw Problem.notAllowed("guest", "a guest may read, not record");
    }
    return seat;
  }
}
