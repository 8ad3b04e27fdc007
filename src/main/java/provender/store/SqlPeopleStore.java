package provender.store;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import provender.people.Keeper;
import provender.people.PeopleStore;
import provender.people.Role;
import provender.people.Seat;

/** People, households, tanks and sessions in SQL. */
@ApplicationScoped
@Transactional
class SqlPeopleStore implements PeopleStore {
  private final PeopleRows.Keepers keepers;
  private final PeopleRows.Memberships memberships;
  private final PeopleRows.Households households;
  private final Tanks tanks;
  private final PeopleRows.Invitations invitations;

  SqlPeopleStore(
      PeopleRows.Keepers keepers, PeopleRows.Memberships memberships, PeopleRows.Households households, Tanks tanks, PeopleRows.Invitations invitations) {
    this.keepers = keepers;
    this.memberships = memberships;
    this.households = households;
    this.tanks = tanks;
    this.invitations = invitations;
  }

  @Override
  public @Nullable Account account(String name) {
    KeeperRow row = keepers.find("name", name).firstResult();
    return row == null ? null : new Account(new Keeper(row.id, row.name), row.passwordHash);
  }

  @Override
  public List<Membership> memberships(String keeperId) {
    List<Membership> found = new ArrayList<>();
    for (MembershipRow row : memberships.list("key.keeper = ?1 and endedAt is null order by key.household", keeperId)) {
      HouseholdRow household = households.findById(row.key.household());
      found.add(new Membership(row.key.household(), household == null ? "" : household.name, row.role));
    }
    return found;
  }

  @Override
  public List<Seat> seats(String keeperId) {
    List<Seat> seats = new ArrayList<>();
    for (MembershipRow member : memberships.list("key.keeper = ?1 and endedAt is null order by key.household", keeperId)) {
      for (TankRow tank : tanks.list("key.household = ?1 and putAwayAt is null order by name", member.key.household())) {
        seats.add(new Seat(tank.key.household(), tank.key.tank(), tank.name, tank.zone, member.role));
      }
    }
    return seats;
  }

  @Override
  public boolean hasBelonged(String household, String keeperId) {
    return memberships.findById(new MembershipRow.Key(household, keeperId)) != null;
  }

  @Override
  public boolean isEmpty() {
    return households.count() == 0;
  }

  @Override
  public void addHousehold(String id, String name) {
    HouseholdRow row = new HouseholdRow();
    row.id = id;
    row.name = name;
    households.persist(row);
  }

  @Override
  public void addKeeper(String household, Account account, Role role) {
    if (keepers.findById(account.keeper().id()) == null) {
      KeeperRow row = new KeeperRow();
      row.id = account.keeper().id();
      row.name = account.keeper().name();
      row.passwordHash = account.passwordHash();
      keepers.persist(row);
    }
    addMember(household, account.keeper().id(), role);
  }

  @Override
  public void addMember(String household, String keeperId, Role role) {
    MembershipRow.Key key = new MembershipRow.Key(household, keeperId);
    MembershipRow known = memberships.findById(key);
    if (known == null) {
      MembershipRow member = new MembershipRow();
      member.key = key;
      member.role = role;
      memberships.persist(member);
    } else if (known.endedAt != null) {
      known.endedAt = null;
      known.role = role;
    }
  }

  @Override
  public void addInvitation(String household, String codeHash, Role role, Instant expiresAt) {
    InvitationRow row = new InvitationRow();
    row.key = new InvitationRow.Key(household, codeHash);
    row.role = role;
    row.expiresAt = expiresAt;
    invitations.persist(row);
  }

  @Override
  public @Nullable Invitation takeInvitation(String codeHash, Instant now) {
    InvitationRow row = invitations.find("key.codeHash", codeHash).firstResult();
    // Of two who come at the same moment one deletes the row, and only that one is let in.
    boolean mine = invitations.delete("key.codeHash", codeHash) == 1;
    return row != null && mine && row.expiresAt.isAfter(now) ? new Invitation(row.key.household(), row.role) : null;
  }

  @Override
  public void addTank(String household, String id, String name, String zone) {
    TankRow row = new TankRow();
    row.key = new TankRow.Key(household, id);
    row.name = name;
    row.zone = zone;
    row.epoch = UUID.randomUUID().toString();
    tanks.persist(row);
  }
}
