package provender.store;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import provender.people.Keeper;
import provender.people.MemberStore;
import provender.people.Role;

/** Who belongs to a household, and what changed among them, in SQL. */
@ApplicationScoped
@Transactional
class SqlMemberStore implements MemberStore {
  private final PeopleRows.Households households;
  private final PeopleRows.Memberships memberships;
  private final PeopleRows.Keepers keepers;
  private final PeopleRows.Changes changes;
  private final PeopleRows.Invitations invitations;
  private final PeopleRows.Resets resets;
  private final RowFence fence;

  SqlMemberStore(
      PeopleRows.Households households,
      PeopleRows.Memberships memberships,
      PeopleRows.Keepers keepers,
      PeopleRows.Changes changes,
      PeopleRows.Invitations invitations,
      PeopleRows.Resets resets,
      RowFence fence) {
    this.households = households;
    this.memberships = memberships;
    this.keepers = keepers;
    this.changes = changes;
    this.invitations = invitations;
    this.resets = resets;
    this.fence = fence;
  }

  @Override
  public <T> T together(String household, Supplier<T> work) {
    households.findById(household, LockModeType.PESSIMISTIC_WRITE);
    return work.get();
  }

  @Override
  public List<Member> members(String household) {
    List<Member> found = new ArrayList<>();
    for (MembershipRow row : memberships.list("key.household", household)) {
      KeeperRow keeper = keepers.findById(row.key.keeper());
      found.add(new Member(new Keeper(row.key.keeper(), keeper == null ? "" : keeper.name), row.role, row.endedAt));
    }
    found.sort(Comparator.comparing(member -> member.keeper().name()));
    return found;
  }

  @Override
  public void changeRole(String household, String keeperId, Role role) {
    memberships.update("role = ?1 where key.household = ?2 and key.keeper = ?3", role, household, keeperId);
  }

  @Override
  public void end(String household, String keeperId, Instant now) {
    memberships.update("endedAt = ?1 where key.household = ?2 and key.keeper = ?3", now, household, keeperId);
  }

  @Override
  public void note(String household, Change change) {
    fence.enter(household);
    ChangeRow row = new ChangeRow();
    row.key = new ChangeRow.Key(household, UUID.randomUUID().toString());
    row.happenedAt = change.at();
    row.by = change.by();
    row.about = change.about();
    row.what = change.what();
    row.role = change.role();
    changes.persistAndFlush(row);
  }

  @Override
  public List<Change> changes(String household, int most) {
    fence.enter(household);
    return changes.find("key.household = ?1 order by happenedAt desc", household).page(0, most).list().stream()
        .map(row -> new Change(row.happenedAt, row.by, row.about, row.what, row.role))
        .toList();
  }

  @Override
  public List<Invited> invitations(String household, Instant now) {
    return invitations.list("key.household = ?1 and expiresAt > ?2 order by expiresAt", household, now).stream()
        .map(row -> new Invited(row.key.codeHash(), row.role, row.expiresAt))
        .toList();
  }

  @Override
  public boolean withdrawInvitation(String household, String id) {
    return invitations.deleteById(new InvitationRow.Key(household, id));
  }

  @Override
  public void addReset(String keeperId, String codeHash, Instant expiresAt) {
    ResetRow row = new ResetRow();
    row.codeHash = codeHash;
    row.keeperId = keeperId;
    row.expiresAt = expiresAt;
    resets.persist(row);
  }

  @Override
  public @Nullable Keeper takeReset(String codeHash, Instant now) {
    ResetRow row = resets.find("codeHash", codeHash).firstResult();
    boolean mine = row != null && resets.delete("codeHash", codeHash) == 1;
    if (row == null || !mine || !row.expiresAt.isAfter(now)) {
      return null;
    }
    resets.delete("keeperId", row.keeperId);
    KeeperRow keeper = keepers.findById(row.keeperId);
    return keeper == null ? null : new Keeper(keeper.id, keeper.name);
  }

  @Override
  public void changePassword(String keeperId, String passwordHash) {
    keepers.update("passwordHash = ?1 where id = ?2", passwordHash, keeperId);
    resets.delete("keeperId", keeperId);
  }
}
