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

  Signed(PeopleStore people, HttpHeaders headers) {
    this.sessions = new Sessions(people);
    this.people = people;
    this.headers = headers;
  }

  @Nullable String token() {
    Cookie cookie = headers.getCookies().get(COOKIE);
    return cookie == null ? null : cookie.getValue();
  }

  Keeper keeper() {
    String token = token();
    Keeper keeper = token == null ? null : sessions.keeper(token, Instant.now());
    if (keeper == null) {
      throw Problem.signInNeeded();
    }
    return keeper;
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

  /** Refuses everyone but a steward; a household of strangers is as unknown as one that does not exist. */
  void stewardOf(String household) {
    for (PeopleStore.Membership membership : people.memberships(keeper().id())) {
      if (membership.household().equals(household)) {
        if (membership.role() != Role.STEWARD) {
          throw Problem.notAllowed("steward-only", "only a steward of the household may do this");
        }
        return;
      }
    }
    throw Problem.notFound();
  }

  Seat seatToRecord(String tank) {
    Seat seat = seat(tank);
    if (seat.role() == Role.GUEST) {
      throw Problem.notAllowed("guest", "a guest may read, not record");
    }
    return seat;
  }
}
