package provender.web;

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
  private final Rates rates;
  private final String cookie;
  private @Nullable Keeper keeper;

  Signed(
      PeopleStore people,
      Sessions sessions,
      HttpHeaders headers,
      Rates rates,
      @ConfigProperty(name = "provender.https") boolean https) {
    this.sessions = sessions;
    this.people = people;
    this.headers = headers;
    this.rates = rates;
    this.cookie = https ? COOKIE_OVER_HTTPS : COOKIE;
  }

  @Nullable String token() {
    Cookie sent = headers.getCookies().get(cookie);
    return sent == null ? null : sent.getValue();
  }

  Keeper keeper() {
    Keeper known = keeper;
    if (known == null) {
      String token = token();
      known = token == null ? null : sessions.keeper(token, Instant.now());
    }
    if (known == null) {
      throw Problem.signInNeeded();
    }
    keeper = known;
    return known;
  }

  /** The keeper's seat at a tank; a tank of strangers is as unknown as one that does not exist. */
  Seat seat(String tank) {
    for (Seat seat : people.seats(keeper().id())) {
      if (seat.tank().equals(tank)) {
        return seat;
      }
    }
    throw Problem.notFound();
  }

  /** Refuses everyone who does not belong; a household of strangers is as unknown as one that does not exist. */
  PeopleStore.Membership memberOf(String household) {
    for (PeopleStore.Membership membership : people.memberships(keeper().id())) {
      if (membership.household().equals(household)) {
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
    if (rates.isTooMuch("household " + seat.household(), Instant.now())) {
      throw Problem.tooMany("too many batches for one household within a minute; wait a little");
    }
    if (seat.role() == Role.GUEST) {
      throw Problem.notAllowed("guest", "a guest may read, not record");
    }
    return seat;
  }
}
