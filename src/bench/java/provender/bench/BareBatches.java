package provender.bench;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.Statement;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.function.Function;

/** The same rows in the same batches and commits, in the same table of the same file, by nobody but the database. */
final class BareBatches {
  private BareBatches() {}

  /** Milliseconds of the quickest round, in the data folder of a server that has ended. */
  static double best(int rounds, Path data, String household, Function<String, List<JsonNode>> entriesOf) throws Exception {
    String url = "jdbc:h2:file:" + data.toAbsolutePath() + "/provender;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;WRITE_DELAY=0";
    double best = Double.MAX_VALUE;
    try (Connection connection = DriverManager.getConnection(url, "provender", "")) {
      for (int round = 0; round < rounds; round++) {
        String tank = "bare-" + round;
        try (Statement statement = connection.createStatement()) {
          statement.execute("insert into tank (household_id, id, name, zone, epoch, head) values ('" + household + "', '" + tank + "', 'Bare', 'Europe/Berlin', 'e', 0)");
        }
        best = Math.min(best, batches(connection, household, tank, entriesOf.apply(tank)));
      }
    }
    return best;
  }

  private static double batches(Connection connection, String household, String tank, List<JsonNode> entries) throws Exception {
    connection.setAutoCommit(false);
    long start = System.nanoTime();
    try (PreparedStatement insert = connection.prepareStatement(
        "insert into journal_entry (household_id, tank_id, seq, id, device, device_seq, kind, happened_at, received_at, written, checksum)"
            + " values (?, ?, ?, ?, ?, ?, 'feeding', ?, ?, ?, 1)")) {
      for (int i = 1; i <= entries.size(); i++) {
        JsonNode entry = entries.get(i - 1);
        insert.setString(1, household);
        insert.setString(2, tank);
        insert.setLong(3, i);
        insert.setString(4, entry.path("id").asText());
        insert.setString(5, entry.path("device").asText());
        insert.setLong(6, i);
        insert.setString(7, entry.path("happenedAt").asText());
        insert.setObject(8, OffsetDateTime.parse("2026-06-15T06:10:05Z"));
        insert.setString(9, entry.toString());
        insert.addBatch();
        if (i % JournalBenchmark.BATCH == 0) {
          insert.executeBatch();
          connection.commit();
        }
      }
    }
    connection.setAutoCommit(true);
    return JournalBenchmark.millis(start);
  }
}
