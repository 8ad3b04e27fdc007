package provender.store;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import provender.people.MemberStore.Change;
import provender.people.PersonStore;

/** What is kept about one person, in SQL. */
@ApplicationScoped
@Transactional
class SqlPersonStore implements PersonStore {
  private final PeopleRows.Households households;
  private final PeopleRows.Memberships memberships;
  private final PeopleRows.Keepers keepers;
  private final PeopleRows.Changes changes;
  private final PeopleRows.PhoneSessions sessions;
  private final PeopleRows.Passkeys passkeys;
  private final PeopleRows.Resets resets;
  private final PeopleRows.Unconfirmed unconfirmed;
  private final Tanks tanks;
  private final RowFence fence;

  SqlPersonStore(
      PeopleRows.Households households,
      PeopleRows.Memberships memberships,
      PeopleRows.Keepers keepers,
      PeopleRows.Changes changes,
      PeopleRows.PhoneSessions sessions,
      PeopleRows.Passkeys passkeys,
      PeopleRows.Resets resets,
      PeopleRows.Unconfirmed unconfirmed,
      Tanks tanks,
      RowFence fence) {
    this.households = households;
    this.memberships = memberships;
    this.keepers = keepers;
    this.changes = changes;
    this.sessions = sessions;
    this.passkeys = passkeys;
    this.resets = resets;
    this.unconfirmed = unconfirmed;
    this.tanks = tanks;
    this.fence = fence;
  }

  @Override
  public List<Belonging> belongings(String keeperId) {
    List<Belonging> found = new ArrayList<>();
    for (MembershipRow row : memberships.list("key.keeper = ?1 order by key.household", keeperId)) {
      HouseholdRow household = households.findById(row.key.household());
      found.add(new Belonging(row.key.household(), household == null ? "" : household.name, row.role, row.endedAt));
    }
    return found;
  }

  @Override
  public List<String> tanks(String household) {
    return tanks.list("key.household = ?1 order by key.tank", household).stream().map(row -> row.key.tank()).toList();
  }

  @Override
  public List<ChangeIn> changes(String keeperId) {
    List<ChangeIn> found = new ArrayList<>();
    for (MembershipRow membership : memberships.list("key.keeper = ?1", keeperId)) {
      String household = membership.key.household();
      fence.enter(household);
      for (ChangeRow row : changes.list("key.household = ?1 and (by = ?2 or about = ?2)", household, keeperId)) {
        found.add(new ChangeIn(household, new Change(row.happenedAt, row.by, row.about, row.what, row.role)));
      }
    }
    found.sort(Comparator.comparing(one -> one.change().at()));
    return found;
  }

  @Override
  public void erase(String keeperId, String neutralName, String passwordHash) {
    keepers.update("name = ?1, passwordHash = ?2, mailAddress = null where id = ?3", neutralName, passwordHash, keeperId);
    sessions.delete("keeperId", keeperId);
    passkeys.delete("key.keeper", keeperId);
    resets.delete("keeperId", keeperId);
    unconfirmed.delete("keeperId", keeperId);
  }
}
