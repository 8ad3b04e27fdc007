package provender.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.Statement;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import provender.Phone;
import provender.RunningServer;

/**
 * Prints what the journal takes over HTTP beside a bare batch of inserts into the same table of the same database: first push,
 * second push of the same, single pushes into a small and a large journal, and a pull of everything. {@code -Djournal.large=N}
 * sets how large; ten million take a quarter of an hour.
 */
public final class JournalBenchmark {
  private static final int ENTRIES = 10_000;
  private static final int BATCH = 500;
  private static final int SINGLES = 200;
  /** A server runs for months: what both sides take once their code is compiled. */
  private static final int ROUNDS = 12;
  /** One person sends here what a household writes in centuries. */
  private static final String[] UNHURRIED = {RunningServer.FULLY_COMPILED, "-Dprovender.rates.address=100000000",
      "-Dprovender.rates.person=100000000", "-Dprovender.rates.household=100000000"};
  private static final ObjectMapper JSON = new ObjectMapper();

  private JournalBenchmark() {}

  public static void main(String[] arguments) throws Exception {
    int large = Integer.getInteger("journal.large", 1_000_000);
    String household = "quernhaven";
    String device = UUID.randomUUID().toString();
    try (RunningServer server = RunningServer.fresh("journal-bench", UNHURRIED)) {
      Phone phone = Phone.signedIn(server.url(), "Maren", "demo-lantern-maren");
      push(phone, entries(tank(phone, household), device, phone.keeper()));
      double first = Double.MAX_VALUE;
      double again = Double.MAX_VALUE;
      double pull = Double.MAX_VALUE;
      for (int round = 0; round < ROUNDS; round++) {
        String tank = tank(phone, household);
        List<JsonNode> entries = entries(tank, device, phone.keeper());
        first = Math.min(first, push(phone, entries));
        again = Math.min(again, push(phone, entries));
        long start = System.nanoTime();
        phone.pullAll(tank);
        pull = Math.min(pull, millis(start));
      }
      server.kill();
      double jdbc = bareBatches(server.data(), household, phone.keeper());
      System.out.printf("%d entries: bare JDBC batch %.0f ms, push over HTTP %.0f ms (ratio %.2f), the same again %.0f ms (ratio %.2f), pull %.0f ms%n",
          ENTRIES, jdbc, first, first / jdbc, again, again / first, pull);
    }
    try (RunningServer server = RunningServer.fresh("journal-bench", UNHURRIED)) {
      Phone phone = Phone.signedIn(server.url(), "Maren", "demo-lantern-maren");
      String small = tank(phone, household);
      push(phone, entries(small, device, phone.keeper()));
      // Once unlooked at, so that compiled code is held against compiled code.
      p95(phone, tank(phone, household), device);
      double p95Small = p95(phone, small, device);
      String big = tank(phone, household);
      for (int i = 0; i < large / ENTRIES; i++) {
        push(phone, entries(big, device, phone.keeper()));
      }
      double p95Large = p95(phone, big, device);
      System.out.printf("p95 of a push of one entry: with %d stored %.2f ms, with %d stored %.2f ms (ratio %.2f)%n",
          ENTRIES, p95Small, large, p95Large, p95Large / p95Small);
    }
  }

  private static String tank(Phone phone, String household) throws Exception {
    return JSON.readTree(phone.post("/api/v1/households/" + household + "/tanks", "{\"name\":\"Bench\",\"zone\":\"Europe/Berlin\"}").body())
        .path("id").asText();
  }

  private static List<JsonNode> entries(String tank, String device, String keeper) {
    List<JsonNode> entries = new ArrayList<>(ENTRIES);
    for (int i = 1; i <= ENTRIES; i++) {
      entries.add(Phone.feeding(newId(), tank, device, i, keeper));
    }
    return entries;
  }

  /** As phones mint them: of version 7 (RFC 9562), the time before everything else. */
  private static String newId() {
    UUID bits = UUID.randomUUID();
    long millis = System.currentTimeMillis();
    return new UUID((millis << 16) | 0x7000L | (bits.getMostSignificantBits() & 0xFFFL), bits.getLeastSignificantBits()).toString();
  }

  private static double push(Phone phone, List<JsonNode> entries) throws Exception {
    String tank = entries.get(0).path("tank").asText();
    long start = System.nanoTime();
    for (int from = 0; from < entries.size(); from += BATCH) {
      JsonNode said = phone.push(tank, entries.subList(from, from + BATCH).toArray(JsonNode[]::new));
      if (said.path("answers").size() != BATCH) {
        throw new IllegalStateException(said.toString());
      }
    }
    return millis(start);
  }

  private static double p95(Phone phone, String tank, String device) throws Exception {
    double[] times = new double[SINGLES];
    for (int i = 0; i < SINGLES; i++) {
      ObjectNode entry = Phone.feeding(newId(), tank, device, i + 1, phone.keeper());
      long start = System.nanoTime();
      phone.push(tank, entry);
      times[i] = millis(start);
    }
    Arrays.sort(times);
    return times[SINGLES * 95 / 100];
  }

  /** The same rows in the same batches and commits, in the same table of the same file, by nobody but the database. */
  private static double bareBatches(Path data, String household, String keeper) throws Exception {
    String url = "jdbc:h2:file:" + data.toAbsolutePath() + "/provender;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;WRITE_DELAY=0";
    double best = Double.MAX_VALUE;
    try (Connection connection = DriverManager.getConnection(url, "provender", "")) {
      for (int round = 0; round < ROUNDS; round++) {
        String tank = "bare-" + round;
        try (Statement statement = connection.createStatement()) {
          statement.execute("insert into tank (household_id, id, name, zone, epoch, head) values ('" + household + "', '" + tank + "', 'Bare', 'Europe/Berlin', 'e', 0)");
        }
        best = Math.min(best, bareBatch(connection, household, tank, entries(tank, UUID.randomUUID().toString(), keeper)));
      }
    }
    return best;
  }

  private static double bareBatch(Connection connection, String household, String tank, List<JsonNode> entries) throws Exception {
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
        if (i % BATCH == 0) {
          insert.executeBatch();
          connection.commit();
        }
      }
    }
    connection.setAutoCommit(true);
    return millis(start);
  }

  private static double millis(long start) {
    return (System.nanoTime() - start) / 1e6;
  }
}
