package provender.web;

import jakarta.enterprise.context.RequestScoped;
import jakarta.ws.rs.core.Cookie;
import jakarta.ws.rs.core.HttpHeaders;
import java.time.Instant;
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

  private final Sessions sessions;
  private final PeopleStore people;
  private final HttpHeaders headers;
  private @Nullable Keeper keeper;

  Signed(PeopleStore people, Sessions sessions, HttpHeaders headers) {
    this.sessions = sessions;
    this.people = people;
    this.headers = headers;
  }

  @Nullable String token() {
    Cookie cookie = headers.getCookies().get(COOKIE);
    return cookie == null ? null : cookie.getValue();
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
    if (seat.role() == Role.GUEST) {
      throw Problem.notAllowed("guest", "a guest may read, not record");
    }
    return seat;
  }
}
