package provender;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

/** Eight phones come back from a month without a network, all at once, over HTTP. */
class MonthOfflineIT {
  private static final int PHONES = 8;
  private static final int ENTRIES = 1000;
  private static final int BATCH = 500;
  private static final long MONTH_MINUTES = 30 * 24 * 60L;

  @Test
  void eight_phones_with_a_thousand_entries_each_are_of_one_mind() throws Exception {
    try (RunningServer server = RunningServer.fresh("month")) {
      List<Phone> phones = new ArrayList<>();
      List<List<JsonNode>> queues = new ArrayList<>();
      List<String> all = new ArrayList<>();
      for (int i = 0; i < PHONES; i++) {
        Phone phone = Phone.signedIn(server.url(), "Bram", "demo-lantern-bram");
        List<JsonNode> queue = queue(phone, phone.tanks().get(0));
        queue.forEach(entry -> all.add(entry.path("id").asText()));
        phones.add(phone);
        queues.add(queue);
      }
      String tank = phones.get(0).tanks().get(0);
      int before = phones.get(0).pullAll(tank).size();
      Instant began = Instant.now();
      atOnce(i -> {
        for (int from = 0; from < ENTRIES; from += BATCH) {
          phones.get(i).push(tank, queues.get(i).subList(from, from + BATCH).toArray(JsonNode[]::new));
        }
        return List.of();
      });
      List<List<String>> copies = atOnce(i -> phones.get(i).pullAll(tank).stream().map(JsonNode::toString).toList());
      Duration took = Duration.between(began, Instant.now());

      System.out.println("8 phones of 1,000 entries over HTTP: of one mind after " + took.toMillis() + " ms");
      assertThat(copies).allSatisfy(copy -> assertThat(copy).isEqualTo(copies.get(0)));
      assertThat(phones.get(0).pullAll(tank).stream().skip(before).map(entry -> entry.path("id").asText()))
          .containsExactlyInAnyOrderElementsOf(all);
    }
  }

  private static List<JsonNode> queue(Phone phone, String tank) {
    String device = UUID.randomUUID().toString();
    OffsetDateTime start = OffsetDateTime.parse("2026-06-15T08:10:00+02:00");
    List<JsonNode> queue = new ArrayList<>();
    for (int i = 1; i <= ENTRIES; i++) {
      ObjectNode entry = Phone.feeding(UUID.randomUUID().toString(), tank, device, i, phone.keeper());
      queue.add(entry.put("happenedAt", start.plusMinutes(i * MONTH_MINUTES / ENTRIES).toString()));
    }
    return queue;
  }

  private interface Work {
    List<String> of(int phone) throws Exception;
  }

  private static List<List<String>> atOnce(Work work) throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(PHONES);
    List<Callable<List<String>>> calls = new ArrayList<>();
    for (int i = 0; i < PHONES; i++) {
      int phone = i;
      calls.add(() -> work.of(phone));
    }
    List<List<String>> results = new ArrayList<>();
    for (Future<List<String>> done : threads.invokeAll(calls)) {
      results.add(done.get());
    }
    threads.shutdown();
    return results;
  }
}
