package provender.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.RandomAccessFile;
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
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import provender.HowLong;
import provender.Phone;
import provender.sync.Checksum;

class DamagedFileTest {
  private static final int ENTRIES = 3000;
  private static final int LONGEST_WOUND = 512;
  private static final int HEADERS = 8192;

  @TempDir Path folder;

  @Test
  void a_damaged_file_is_noticed_before_it_gives_out_anything_but_what_was_written() throws Exception {
    Path whole = written();
    List<String> before = texts(whole);
    long seed = Long.getLong("faults.seed", System.nanoTime());
    Random random = new Random(seed);
    int noticed = 0;
    int files = HowLong.times(15, 100);
    for (int i = 0; i < files; i++) {
      Path copy = Files.copy(whole, folder.resolve("copy" + i + ".mv.db"));
      wound(copy, random);
      boolean sound;
      try (Connection connection = open(copy)) {
        sound = new JournalCheck(connection).faults().isEmpty() && !new JournalCheck(connection).tanks().isEmpty();
      } catch (SQLException | RuntimeException unreadable) {
        sound = false;
      }
      if (sound) {
        assertThat(texts(copy)).as("file " + i + ", seed " + seed).isEqualTo(before);
      } else {
        noticed++;
      }
      Files.delete(copy);
    }
    System.out.println("damaged files: " + noticed + " of " + files + " noticed, the others lost nothing; seed " + seed);
    assertThat(noticed).isPositive();
  }

  private Path written() throws Exception {
    Path file = folder.resolve("whole.mv.db");
    try (Connection connection = open(file); Statement statement = connection.createStatement()) {
      for (String script : List.of("V1__households_and_journal.sql", "V10__checksums.sql")) {
        statement.execute(Files.readString(Path.of("src/main/resources/db/migration", script)));
      }
      statement.execute("insert into household values ('home', 'Home')");
      long sum = 0;
      String device = UUID.randomUUID().toString();
      try (PreparedStatement insert = connection.prepareStatement(
          "insert into journal_entry (household_id, tank_id, seq, id, device, device_seq, kind, happened_at, received_at, written, checksum)"
              + " values ('home', 'reef', ?, ?, ?, ?, 'feeding', ?, ?, ?, ?)")) {
        statement.execute("insert into tank (household_id, id, name, zone, epoch, head) values ('home', 'reef', 'Reef', 'Europe/Berlin', 'e', 0)");
        for (int seq = 1; seq <= ENTRIES; seq++) {
          ObjectNode entry = Phone.feeding(UUID.randomUUID().toString(), "reef", device, seq, "teo");
          long checksum = Checksum.of(entry, seq);
          sum = Checksum.sum(sum, checksum);
          insert.setLong(1, seq);
          insert.setString(2, entry.path("id").asText());
          insert.setString(3, device);
          insert.setLong(4, seq);
          insert.setString(5, entry.path("happenedAt").asText());
          insert.setObject(6, OffsetDateTime.parse("2026-06-15T06:10:05Z"));
          insert.setString(7, entry.toString());
          insert.setLong(8, checksum);
          insert.addBatch();
        }
        insert.executeBatch();
      }
      statement.execute("update tank set head = " + ENTRIES + ", checksum = " + sum);
      assertThat(new JournalCheck(connection).faults()).isEmpty();
    }
    return file;
  }

  private static Connection open(Path file) throws SQLException {
    String name = file.toString().replace(".mv.db", "");
    return DriverManager.getConnection(
        "jdbc:h2:file:" + name + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;WRITE_DELAY=0", "sa", "");
  }

  /** Random bytes somewhere behind the two headers, of which the database keeps two for this very case. */
  private static void wound(Path file, Random random) throws IOException {
    byte[] wound = new byte[1 + random.nextInt(LONGEST_WOUND)];
    random.nextBytes(wound);
    try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "rw")) {
      bytes.seek(HEADERS + (long) (random.nextDouble() * (bytes.length() - HEADERS - wound.length)));
      bytes.write(wound);
    }
  }

  private static List<String> texts(Path file) throws SQLException {
    List<String> texts = new ArrayList<>();
    try (Connection connection = open(file); Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery("select seq, written from journal_entry order by seq")) {
      while (rows.next()) {
        texts.add(rows.getLong(1) + rows.getString(2));
      }
    }
    return texts;
  }
}
