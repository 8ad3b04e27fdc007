package provender.store;

import java.sql.Array;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import provender.sync.JournalStore.Known;
import provender.sync.TankKey;

/**
 * Entries by the hundred, as a phone's queue brings them, past the entity manager: one statement whatever their number, and no
 * text that nobody needs.
 */
final class EntryBatch {
  private static final String INSERT =
      "insert into journal_entry (household_id, tank_id, seq, id, device, device_seq, kind, happened_at, received_at, written, checksum)"
          + " values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";
  /**
   * From the ids to the entries, and joined from that side, so that no database can begin at the other: the plan is made once, when a
   * journal may be empty, and H2 would then look through the whole of it ever after.
   */
  static final String KNOWN =
      "select sent.id, e.seq, e.checksum from unnest(cast(? as varchar array)) as sent (id)"
          + " left join journal_entry e on e.household_id = ? and e.tank_id = ? and e.id = sent.id";

  private EntryBatch() {}

  static void insert(Connection connection, List<EntryRow> rows) throws SQLException {
    try (PreparedStatement insert = connection.prepareStatement(INSERT)) {
      for (EntryRow row : rows) {
        insert.setString(1, row.key.household());
        insert.setString(2, row.key.tank());
        insert.setLong(3, row.key.seq());
        insert.setString(4, row.id);
        insert.setString(5, row.device);
        insert.setLong(6, row.deviceSeq);
        insert.setString(7, row.kind);
        insert.setString(8, row.happenedAt);
        insert.setObject(9, row.receivedAt.atOffset(ZoneOffset.UTC));
        insert.setString(10, row.written);
        insert.setObject(11, row.checksum);
        insert.addBatch();
      }
      insert.executeBatch();
    }
  }

  static Map<String, Known> known(Connection connection, TankKey tank, Set<String> ids) throws SQLException {
    Map<String, Known> known = new HashMap<>();
    // In the order in which the index holds them: one page of it is looked through after the other.
    Array wanted = connection.createArrayOf("varchar", ids.stream().sorted().toArray());
    try (PreparedStatement select = connection.prepareStatement(KNOWN)) {
      select.setArray(1, wanted);
      select.setString(2, tank.household());
      select.setString(3, tank.tank());
      try (ResultSet rows = select.executeQuery()) {
        while (rows.next()) {
          long seq = rows.getLong(2);
          if (seq > 0) {
            known.put(rows.getString(1), new Known(seq, rows.getLong(3)));
          }
        }
      }
    } finally {
      wanted.free();
    }
    return known;
  }
}
