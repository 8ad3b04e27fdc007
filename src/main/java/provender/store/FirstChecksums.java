package provender.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import provender.sync.Checksum;

/** Entries kept before there were checksums are given theirs, once, at the first start after. */
@ApplicationScoped
class FirstChecksums {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final int AT_ONCE = 2000;

  private final SqlJournalStore entries;
  private final Tanks tanks;
  private final RowFence fence;

  FirstChecksums(SqlJournalStore entries, Tanks tanks, RowFence fence) {
    this.entries = entries;
    this.tanks = tanks;
    this.fence = fence;
  }

  /** @return whether there may be more */
  @Transactional
  boolean giveSome() {
    boolean gave = false;
    for (TankRow tank : tanks.listAll()) {
      fence.enter(tank.key.household());
      gave |= giveSome(tank);
      // Out of the session before the next household is let in.
      entries.flush();
    }
    return gave;
  }

  private boolean giveSome(TankRow tank) {
    List<EntryRow> rows =
        entries
            .find("key.household = ?1 and key.tank = ?2 and checksum is null order by key.household, key.tank, key.seq", tank.key.household(), tank.key.tank())
            .page(0, AT_ONCE)
            .list();
    for (EntryRow row : rows) {
      long checksum = of(row);
      row.checksum = checksum;
      tank.checksum = Checksum.sum(tank.checksum, checksum);
    }
    return !rows.isEmpty();
  }

  private static long of(EntryRow row) {
    try {
      return Checksum.of(JSON.readTree(row.written), row.key.seq());
    } catch (JsonProcessingException damaged) {
      throw new IllegalStateException("entry " + row.id + " can no longer be read", damaged);
    }
  }
}
