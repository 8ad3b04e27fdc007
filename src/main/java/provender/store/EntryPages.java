package provender.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import provender.sync.JournalStore.Known;
import provender.sync.JournalStore.Stored;
import provender.sync.TankKey;

/** A journal in its order, so many entries at a time, past the entity manager: what is read to be handed on needs no watching for changes. */
final class EntryPages {
  /**
   * In the order of the whole key: only when an index is named from its first column on does H2 take its order and stop after the last
   * row wanted. Ordered by the place alone, it reads and sorts all that comes after, at every page.
   */
  private static final String AFTER =
      " from journal_entry where household_id = ? and tank_id = ? and seq > ? order by household_id, tank_id, seq fetch first ? rows only";
  static final String ENTRIES = "select seq, checksum, id, written, received_at" + AFTER;
  static final String PLACES = "select seq, checksum" + AFTER;

  private EntryPages() {}

  static List<Stored> entries(Connection connection, TankKey tank, long after, int most) throws SQLException {
    List<Stored> entries = new ArrayList<>();
    try (PreparedStatement select = connection.prepareStatement(ENTRIES); ResultSet rows = found(select, tank, after, most)) {
      while (rows.next()) {
        entries.add(new Stored(rows.getLong(1), rows.getString(3), rows.getString(4),
            rows.getObject(5, OffsetDateTime.class).toInstant(), rows.getLong(2)));
      }
    }
    return entries;
  }

  static List<Known> places(Connection connection, TankKey tank, long after, int most) throws SQLException {
    List<Known> places = new ArrayList<>();
    try (PreparedStatement select = connection.prepareStatement(PLACES); ResultSet rows = found(select, tank, after, most)) {
      while (rows.next()) {
        places.add(new Known(rows.getLong(1), rows.getLong(2)));
      }
    }
    return places;
  }

  private static ResultSet found(PreparedStatement select, TankKey tank, long after, int most) throws SQLException {
    select.setString(1, tank.household());
    select.setString(2, tank.tank());
    select.setLong(3, after);
    select.setInt(4, most);
    return select.executeQuery();
  }
}
