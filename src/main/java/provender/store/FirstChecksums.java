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

  FirstChecksums(SqlJournalStore entries, Tanks tanks) {
    this.entries = entries;
    this.tanks = tanks;
  }

  /** @return whether there may be more */
  @Transactional
  boolean giveSome() {
    List<EntryRow> rows = entries.find("checksum is null order by key").page(0, AT_ONCE).list();
    for (EntryRow row : rows) {
      long checksum = of(row);
      TankRow tank = tanks.findById(new TankRow.Key(row.key.household(), row.key.tank()));
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
