package provender.store;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.hibernate.Session;
import provender.sync.Checksum;
import provender.sync.Envelope;
import provender.sync.JournalStore;
import provender.sync.TankKey;

/** Journals in SQL; the tank's row is locked while its journal is written. */
@ApplicationScoped
class SqlJournalStore implements JournalStore, PanacheRepositoryBase<EntryRow, EntryRow.Key> {
  private static final String IN_TANK = "key.household = ?1 and key.tank = ?2";
  private static final int ROWS_AT_ONCE = 50_000;

  private final Tanks tanks;
  private final Instance<Verified> verified;
  private final RowFence fence;

  SqlJournalStore(Tanks tanks, Instance<Verified> verified, RowFence fence) {
    this.tanks = tanks;
    this.verified = verified;
    this.fence = fence;
  }

  @Override
  @Transactional
  public <T> T write(TankKey tank, Function<Writing, T> work) {
    verified.get().mustBeSound(tank);
    fence.enter(tank.household());
    TankRow row = tanks.findById(key(tank), LockModeType.PESSIMISTIC_WRITE);
    if (row == null) {
      throw new IllegalArgumentException("no such tank");
    }
    Locked journal = new Locked(row);
    T result = work.apply(journal);
    journal.insertAdded();
    flush();
    return result;
  }

  @Override
  @Transactional
  public Page read(TankKey tank, long after, int limit) {
    verified.get().mustBeSound(tank);
    fence.enter(tank.household());
    List<Stored> entries = session().doReturningWork(connection -> EntryPages.entries(connection, tank, after, limit));
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

  @Override
  @Transactional
  public List<Sum> sums(TankKey tank, int size) {
    fence.enter(tank.household());
    List<Sum> sums = new ArrayList<>();
    for (List<Known> places = places(tank, 0); !places.isEmpty(); places = places(tank, places.get(places.size() - 1).seq())) {
      places.forEach(place -> add(sums, place.seq(), place.checksum(), size));
    }
    return sums;
  }

  private static void add(List<Sum> sums, long seq, long checksum, int size) {
    long page = (seq - 1) / size;
    Sum last = sums.isEmpty() ? null : sums.get(sums.size() - 1);
    if (last == null || (last.from() - 1) / size != page) {
      sums.add(new Sum(seq, seq, 1, checksum));
    } else {
      sums.set(sums.size() - 1, new Sum(last.from(), seq, last.count() + 1, Checksum.sum(last.checksum(), checksum)));
    }
  }

  private List<Known> places(TankKey tank, long after) {
    return session().doReturningWork(connection -> EntryPages.places(connection, tank, after, ROWS_AT_ONCE));
  }

  private Session session() {
    return getEntityManager().unwrap(Session.class);
  }

  private static TankRow.Key key(TankKey tank) {
    return new TankRow.Key(tank.household(), tank.tank());
  }

  private static Stored stored(EntryRow row) {
    return new Stored(row.key.seq(), row.id, row.written, row.receivedAt, row.checksum == null ? 0 : row.checksum);
  }

  /** A journal whose counter row this transaction holds. */
  private final class Locked implements Writing {
    private final TankRow tank;
    private final List<EntryRow> added = new ArrayList<>();

    Locked(TankRow tank) {
      this.tank = tank;
    }

    @Override
    public Map<String, Known> known(Set<String> ids) {
      return ids.isEmpty() ? Map.of() : session().doReturningWork(connection -> EntryBatch.known(connection, new TankKey(tank.key.household(), tank.key.tank()), ids));
    }

    @Override
    public List<Stored> ofKinds(Set<String> kinds) {
      insertAdded();
      return find(IN_TANK + " and kind in ?3 order by key.seq", tank.key.household(), tank.key.tank(), kinds).stream()
          .map(SqlJournalStore::stored)
          .toList();
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
      row.written = entry.text();
      long checksum = Checksum.of(entry.written(), tank.head);
      row.checksum = checksum;
      tank.checksum = Checksum.sum(tank.checksum, checksum);
      added.add(row);
      return stored(row);
    }

    void insertAdded() {
      if (!added.isEmpty()) {
        session().doWork(connection -> EntryBatch.insert(connection, added));
        added.clear();
      }
    }

    @Override
    public Position position() {
      return new Position(tank.head, tank.epoch);
    }
  }
}
