package provender.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import provender.Phone;
import provender.RunningServer;

/**
 * Prints what the journal takes over HTTP beside a bare batch of inserts into the same table of the same database: first push,
 * second push of the same, single pushes into a small and a large journal, and a pull of everything. {@code -Djournal.large=N}
 * sets how large; ten million take some ten minutes.
 */
public final class JournalBenchmark {
  private static final int ENTRIES = 10_000;
  static final int BATCH = 500;
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
      double jdbc = BareBatches.best(ROUNDS, server.data(), household, tank -> entries(tank, device, phone.keeper()));
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

  static double millis(long start) {
    return (System.nanoTime() - start) / 1e6;
  }
}
