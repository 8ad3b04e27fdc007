package provender.store;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.passkey.PasskeyStore;
import provender.people.Keeper;

/** Passkeys in SQL. */
@ApplicationScoped
@Transactional
class SqlPasskeyStore implements PasskeyStore {
  private final PeopleRows.Passkeys passkeys;
  private final PeopleRows.Keepers keepers;

  SqlPasskeyStore(PeopleRows.Passkeys passkeys, PeopleRows.Keepers keepers) {
    this.passkeys = passkeys;
    this.keepers = keepers;
  }

  @Override
  public void add(Kept passkey) {
    PasskeyRow row = new PasskeyRow();
    row.key = new PasskeyRow.Key(passkey.keeper().id(), passkey.id());
    row.credential = passkey.credential();
    row.place = passkey.place();
    row.publicKey = passkey.publicKey();
    row.mayBeCopied = passkey.mayBeCopied();
    row.uses = passkey.uses();
    row.name = passkey.name();
    row.madeAt = passkey.madeAt();
    passkeys.persist(row);
  }

  @Override
  public @Nullable Kept find(String credential) {
    PasskeyRow row = passkeys.find("credential", credential).firstResult();
    return row == null ? null : kept(row);
  }

  @Override
  public List<Kept> of(String keeperId) {
    return passkeys.list("key.keeper = ?1 order by madeAt, key.id", keeperId).stream().map(this::kept).toList();
  }

  @Override
  public boolean rename(String keeperId, String id, String name) {
    return passkeys.update("name = ?1 where key.keeper = ?2 and key.id = ?3", name, keeperId, id) > 0;
  }

  @Override
  public boolean remove(String keeperId, String id) {
    return passkeys.deleteById(new PasskeyRow.Key(keeperId, id));
  }

  @Override
  public void removeAll(String keeperId) {
    passkeys.delete("key.keeper", keeperId);
  }

  @Override
  public void noteUse(Kept passkey, long uses, Instant now) {
    passkeys.update("uses = ?1, usedAt = ?2 where key.keeper = ?3 and key.id = ?4", uses, now, passkey.keeper().id(), passkey.id());
  }

  private Kept kept(PasskeyRow row) {
    KeeperRow keeper = keepers.findById(row.key.keeper());
    return new Kept(
        new Keeper(row.key.keeper(), keeper == null ? "" : keeper.name),
        row.key.id(), row.credential, row.place, row.publicKey, row.mayBeCopied, row.uses, row.name, row.madeAt, row.usedAt);
  }
}
