package provender.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import provender.Phone;

/**
 * Prints how many entries a second eight writers commit, one each, when a place comes from the tank's locked row, and when it
 * comes from a global sequence, which is unsafe: a reader can pass an entry that commits late. At one tank and at eight.
 */
public final class CounterBenchmark {
  private static final int WRITERS = 8;
  private static final int ROUNDS = 3;
  private static final long NANOS = 4_000_000_000L;
  private static final String INSERT =
      "insert into journal_entry (household_id, tank_id, seq, id, device, device_seq, kind, happened_at, received_at, written, checksum)"
          + " values ('home', ?, ?, ?, 'd', 1, 'feeding', '2026-06-15T08:10:00+02:00', ?, ?, 1)";

  private CounterBenchmark() {}

  public static void main(String[] arguments) throws Exception {
    Path folder = Files.createTempDirectory(Path.of("target"), "counter-bench");
    String url = "jdbc:h2:file:" + folder.toAbsolutePath() + "/bare;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;WRITE_DELAY=0;LOCK_TIMEOUT=60000";
    try (Connection open = DriverManager.getConnection(url, "sa", ""); Statement statement = open.createStatement()) {
      for (String script : List.of("V1__households_and_journal.sql", "V10__checksums.sql")) {
        statement.execute(Files.readString(Path.of("src/main/resources/db/migration", script)));
      }
      statement.execute("create sequence unsafe start with 1000000000");
      statement.execute("insert into household values ('home', 'Home')");
      for (int i = 0; i < WRITERS; i++) {
        statement.execute("insert into tank (household_id, id, name, zone, epoch, head) values ('home', 'reef" + i + "', 'Reef', 'Europe/Berlin', 'e', 0)");
      }
      for (int tanks : new int[] {1, WRITERS}) {
        double counter = 0;
        double sequence = 0;
        for (int round = 0; round < ROUNDS; round++) {
          counter = Math.max(counter, perSecond(url, tanks, CounterBenchmark::fromTheRow));
          sequence = Math.max(sequence, perSecond(url, tanks, CounterBenchmark::fromTheSequence));
        }
        System.out.printf("8 writers at %d tank(s): counter row %.0f entries/s, unsafe sequence %.0f entries/s (ratio %.2f)%n",
            tanks, counter, sequence, counter / sequence);
      }
    }
  }

  private interface Place {
    long of(Connection connection, String tank) throws SQLException;
  }

  private static double perSecond(String url, int tanks, Place place) throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(WRITERS);
    List<Callable<Integer>> writers = new ArrayList<>();
    long end = System.nanoTime() + NANOS;
    for (int i = 0; i < WRITERS; i++) {
      String tank = "reef" + i % tanks;
      writers.add(() -> written(url, tank, place, end));
    }
    int sum = 0;
    for (Future<Integer> one : threads.invokeAll(writers)) {
      sum += one.get();
    }
    threads.shutdown();
    return sum * 1e9 / NANOS;
  }

  private static int written(String url, String tank, Place place, long end) throws SQLException {
    int count = 0;
    try (Connection connection = DriverManager.getConnection(url, "sa", "");
        PreparedStatement insert = connection.prepareStatement(INSERT)) {
      connection.setAutoCommit(false);
      while (System.nanoTime() < end) {
        String id = UUID.randomUUID().toString();
        insert.setString(1, tank);
        insert.setLong(2, place.of(connection, tank));
        insert.setString(3, id);
        insert.setObject(4, OffsetDateTime.parse("2026-06-15T06:10:05Z"));
        insert.setString(5, Phone.feeding(id, tank, "d", 1, "teo").toString());
        insert.executeUpdate();
        connection.commit();
        count++;
      }
    }
    return count;
  }

  private static long fromTheRow(Connection connection, String tank) throws SQLException {
    try (PreparedStatement lock = connection.prepareStatement("select head from tank where household_id = 'home' and id = ? for update");
        PreparedStatement next = connection.prepareStatement("update tank set head = ? where household_id = 'home' and id = ?")) {
      lock.setString(1, tank);
      try (ResultSet row = lock.executeQuery()) {
        row.next();
        long seq = row.getLong(1) + 1;
        next.setLong(1, seq);
        next.setString(2, tank);
        next.executeUpdate();
        return seq;
      }
    }
  }

  private static long fromTheSequence(Connection connection, String tank) throws SQLException {
    try (PreparedStatement next = connection.prepareStatement("select next value for unsafe"); ResultSet row = next.executeQuery()) {
      row.next();
      return row.getLong(1);
    }
  }
}
