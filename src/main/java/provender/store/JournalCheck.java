package provender.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import provender.sync.Checksum;
import provender.sync.JournalStore.Stored;
import provender.sync.TankKey;

/**
 * Reads every journal whole: places without a hole, each text adding up to its checksum, all of them to the tank's, and every
 * id to be found by its index. A database opens a damaged file without a word when the damage is in a page it does not read.
 */
final class JournalCheck {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final int AT_ONCE = 2000;

  private final Connection connection;
  private final Gate gate;

  /** What has to be said before a household's entries may be read. */
  interface Gate {
    void enter(Connection connection, String household) throws SQLException;
  }

  /** Over a database that has no fence. */
  JournalCheck(Connection connection) {
    this(connection, (open, household) -> {});
  }

  JournalCheck(Connection connection, Gate gate) {
    this.connection = connection;
    this.gate = gate;
  }

  record Counter(long head, long checksum) {}

  /** What is wrong, by tank; a tank in order is not among them. */
  Map<TankKey, String> faults() throws SQLException {
    Map<TankKey, String> faults = new LinkedHashMap<>();
    for (Map.Entry<TankKey, Counter> tank : tanks().entrySet()) {
      try {
        gate.enter(connection, tank.getKey().household());
        check(tank.getKey(), tank.getValue());
      } catch (SQLException | JsonProcessingException | RuntimeException unreadable) {
        faults.put(tank.getKey(), String.valueOf(unreadable.getMessage()));
      }
    }
    return faults;
  }

  Map<TankKey, Counter> tanks() throws SQLException {
    Map<TankKey, Counter> tanks = new LinkedHashMap<>();
    try (PreparedStatement all = connection.prepareStatement("select household_id, id, head, checksum from tank");
        ResultSet rows = all.executeQuery()) {
      while (rows.next()) {
        tanks.put(new TankKey(rows.getString(1), rows.getString(2)), new Counter(rows.getLong(3), rows.getLong(4)));
      }
    }
    return tanks;
  }

  private void check(TankKey tank, Counter counter) throws SQLException, JsonProcessingException {
    long seq = 0;
    long sum = 0;
    for (List<Stored> rows = after(tank, 0); !rows.isEmpty(); rows = after(tank, seq)) {
      for (Stored row : rows) {
        seq++;
        JsonNode written = JSON.readTree(row.written());
        sum = Checksum.sum(sum, row.checksum());
        if (row.seq() != seq || !written.path("id").asText().equals(row.id()) || Checksum.of(written, seq) != row.checksum()) {
          throw new IllegalStateException("entry " + seq + " is not what was written");
        }
      }
    }
    if (seq != counter.head() || sum != counter.checksum() || idsByIndex(tank) != seq) {
      throw new IllegalStateException("its " + seq + " entries are not the " + counter.head() + " that were written");
    }
  }

  private List<Stored> after(TankKey tank, long seq) throws SQLException {
    return EntryPages.entries(connection, tank, seq, AT_ONCE);
  }

  private long idsByIndex(TankKey tank) throws SQLException {
    try (PreparedStatement ids =
        connection.prepareStatement("select count(distinct id) from journal_entry where household_id = ? and tank_id = ? and id > ''")) {
      ids.setString(1, tank.household());
      ids.setString(2, tank.tank());
      try (ResultSet count = ids.executeQuery()) {
        return count.next() ? count.getLong(1) : -1;
      }
    }
  }
}
