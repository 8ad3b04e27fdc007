package provender.store;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import provender.sync.Envelope;
import provender.sync.JournalStore;
import provender.sync.TankKey;

/** Journals in SQL; the tank's row is locked while its journal is written. */
@ApplicationScoped
class SqlJournalStore implements JournalStore, PanacheRepositoryBase<EntryRow, EntryRow.Key> {
  private static final String IN_TANK = "key.household = ?1 and key.tank = ?2";

  private final Tanks tanks;

  SqlJournalStore(Tanks tanks) {
    this.tanks = tanks;
  }

  @Override
  @Transactional
  public <T> T write(TankKey tank, Function<Writing, T> work) {
    TankRow row = tanks.findById(key(tank), LockModeType.PESSIMISTIC_WRITE);
    if (row == null) {
      throw new IllegalArgumentException("no such tank");
    }
    T result = work.apply(new Locked(row));
    flush();
    return result;
  }

  @Override
  @Transactional
  public Page read(TankKey tank, long after, int limit) {
    List<Stored> entries = new ArrayList<>();
    find(IN_TANK + " and key.seq > ?3 order by key.seq", tank.household(), tank.tank(), after)
        .page(0, limit)
        .stream()
        .forEach(row -> entries.add(stored(row)));
    return new Page(entries, position(tank));
  }

  @Override
  @Transactional
  public Position position(TankKey tank) {
    TankRow row = tanks.findById(key(tank));
    if (row == null) {
      throw new IllegalArgumentException("no such tank");
    }
    return new Position(row.head, row.epoch);
  }

  private static TankRow.Key key(TankKey tank) {
    return new TankRow.Key(tank.household(), tank.tank());
  }

  private static Stored stored(EntryRow row) {
    return new Stored(row.key.seq(), row.id, row.written, row.receivedAt);
  }

  /** A journal whose counter row this transaction holds. */
  private final class Locked implements Writing {
    private final TankRow tank;

    Locked(TankRow tank) {
      this.tank = tank;
    }

    @Override
    public @Nullable Stored known(String id) {
      EntryRow row = find(IN_TANK + " and id = ?3", tank.key.household(), tank.key.tank(), id).firstResult();
      return row == null ? null : stored(row);
    }

    @Override
    public Stored append(Envelope entry, Instant receivedAt) {
      tank.head++;
      EntryRow row = new EntryRow();
      row.key = new EntryRow.Key(tank.key.household(), tank.key.tank(), tank.head);
      row.id = entry.id();
      row.device = entry.device();
      row.deviceSeq = entry.deviceSeq();
      row.kind = entry.kind();
      row.happenedAt = entry.happenedAt();
      row.receivedAt = receivedAt;
      row.written = entry.written().toString();
      persist(row);
      return stored(row);
    }

    @Override
    public Position position() {
      return new Position(tank.head, tank.epoch);
    }
  }
}
