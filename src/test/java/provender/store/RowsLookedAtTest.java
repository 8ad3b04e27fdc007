package provender.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The embedded database says itself how many rows it looked at, with plans made while the journal was empty. */
class RowsLookedAtTest {
  private static final int STORED = 5_000;
  private static final int SENT = 20;
  private static final Pattern LOOKED_AT = Pattern.compile("scanCount: (\\d+)");

  @Test
  void a_batch_is_looked_up_by_its_ids_however_long_the_journal_has_become_since_the_first_one() throws Exception {
    assertThat(lookedAt(EntryBatch.KNOWN, (connection, select) -> {
      select.setArray(1, connection.createArrayOf("varchar", IntStream.rangeClosed(1, SENT).mapToObj(i -> "entry-" + i * 100).toArray()));
      select.setString(2, "home");
      select.setString(3, "reef");
    })).allMatch(rows -> rows < 10 * SENT);
  }

  @ParameterizedTest
  @ValueSource(strings = {EntryPages.ENTRIES, EntryPages.PLACES})
  void a_page_is_read_without_a_look_at_what_comes_after_it(String page) throws Exception {
    assertThat(lookedAt(page, (connection, select) -> {
      select.setString(1, "home");
      select.setString(2, "reef");
      select.setLong(3, 100);
      select.setInt(4, SENT);
    })).allMatch(rows -> rows <= SENT + 1);
  }

  /** What a statement asks for. */
  private interface Asked {
    void of(Connection connection, PreparedStatement select) throws SQLException;
  }

  private static List<Integer> lookedAt(String query, Asked asked) throws Exception {
    try (Connection connection = DriverManager.getConnection("jdbc:h2:mem:;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE", "sa", "")) {
      begin(connection);
      try (PreparedStatement select = connection.prepareStatement("explain analyze " + query)) {
        fill(connection);
        asked.of(connection, select);
        try (ResultSet plan = select.executeQuery()) {
          plan.next();
          List<Integer> counts = LOOKED_AT.matcher(plan.getString(1)).results().map(found -> Integer.valueOf(found.group(1))).toList();
          assertThat(counts).as(plan.getString(1)).isNotEmpty();
          return counts;
        }
      }
    }
  }

  private static void begin(Connection connection) throws Exception {
    try (Statement statement = connection.createStatement()) {
      for (String script : List.of("V1__households_and_journal.sql", "V10__checksums.sql")) {
        statement.execute(Files.readString(Path.of("src/main/resources/db/migration", script)));
      }
      statement.execute("insert into household values ('home', 'Home')");
      statement.execute("insert into tank (household_id, id, name, zone, epoch, head) values ('home', 'reef', 'Reef', 'Europe/Berlin', 'e', 0)");
    }
  }

  private static void fill(Connection connection) throws SQLException {
    try (PreparedStatement insert = connection.prepareStatement(
        "insert into journal_entry (household_id, tank_id, seq, id, device, device_seq, kind, happened_at, received_at, written, checksum)"
            + " values ('home', 'reef', ?, ?, 'phone', ?, 'feeding', '', current_timestamp, '{}', 1)")) {
      for (int i = 1; i <= STORED; i++) {
        insert.setLong(1, i);
        insert.setString(2, "entry-" + i);
        insert.setLong(3, i);
        insert.addBatch();
      }
      insert.executeBatch();
    }
  }
}
