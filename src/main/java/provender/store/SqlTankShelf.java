package provender.store;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import provender.people.PeopleStore;
import provender.people.PeopleStore.Membership;
import provender.people.Seat;
import provender.people.TankShelf;

/** Tanks put away, in SQL: a mark on the tank's row, and nothing else changes. */
@ApplicationScoped
@Transactional
class SqlTankShelf implements TankShelf {
  private final Tanks tanks;
  private final PeopleStore people;

  SqlTankShelf(Tanks tanks, PeopleStore people) {
    this.tanks = tanks;
    this.people = people;
  }

  @Override
  public boolean putAway(String household, String tank, Instant at) {
    return tanks.update("putAwayAt = ?1 where key.household = ?2 and key.tank = ?3 and putAwayAt is null", at, household, tank) == 1;
  }

  @Override
  public boolean bringBack(String household, String tank) {
    return tanks.update("putAwayAt = null where key.household = ?1 and key.tank = ?2 and putAwayAt is not null", household, tank) == 1;
  }

  @Override
  public List<Seat> away(String keeperId) {
    List<Seat> away = new ArrayList<>();
    for (Membership member : people.memberships(keeperId)) {
      for (TankRow tank : tanks.list("key.household = ?1 and putAwayAt is not null order by name", member.household())) {
        away.add(new Seat(tank.key.household(), tank.key.tank(), tank.name, tank.zone, member.role()));
      }
    }
    return away;
  }
}
