package provender.store;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import provender.people.MailboxStore;

/** Mail addresses in SQL. */
@ApplicationScoped
@Transactional
class SqlMailboxStore implements MailboxStore {
  private final PeopleRows.Keepers keepers;
  private final PeopleRows.Unconfirmed unconfirmed;
  private final PeopleRows.Resets resets;

  SqlMailboxStore(PeopleRows.Keepers keepers, PeopleRows.Unconfirmed unconfirmed, PeopleRows.Resets resets) {
    this.keepers = keepers;
    this.unconfirmed = unconfirmed;
    this.resets = resets;
  }

  @Override
  public @Nullable String address(String keeperId) {
    KeeperRow keeper = keepers.findById(keeperId);
    return keeper == null ? null : keeper.mailAddress;
  }

  @Override
  public void forget(String keeperId) {
    keepers.update("mailAddress = null where id = ?1", keeperId);
    resets.delete("keeperId", keeperId);
    unconfirmed.delete("keeperId", keeperId);
  }

  @Override
  public void addUnconfirmed(String keeperId, String address, String codeHash, Instant expiresAt) {
    unconfirmed.delete("keeperId", keeperId);
    MailboxRow row = new MailboxRow();
    row.codeHash = codeHash;
    row.keeperId = keeperId;
    row.address = address;
    row.expiresAt = expiresAt;
    unconfirmed.persist(row);
  }

  @Override
  public boolean confirm(String codeHash, Instant now) {
    MailboxRow row = unconfirmed.find("codeHash", codeHash).firstResult();
    boolean mine = row != null && unconfirmed.delete("codeHash", codeHash) == 1;
    if (row == null || !mine || !row.expiresAt.isAfter(now)) {
      return false;
    }
    keepers.update("mailAddress = ?1 where id = ?2", row.address, row.keeperId);
    resets.delete("keeperId", row.keeperId);
    return true;
  }
}
