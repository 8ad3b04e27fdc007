package provender.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import provender.HowLong;
import provender.Phone;
import provender.people.PeopleStore;
import provender.sync.Answer;
import provender.sync.JournalStore;
import provender.sync.JournalStore.Stored;
import provender.sync.Pull;
import provender.sync.Push;
import provender.sync.TankKey;

/** Many phones at one journal at once. */
@QuarkusTest
class CrowdTest {
  private static final int PHONES = 8;
  private static final int BATCH = 100;

  @Inject JournalStore journals;
  @Inject PeopleStore people;

  private final TankKey tank = new TankKey("home-" + UUID.randomUUID(), "reef");

  @BeforeEach
  void furnish() {
    people.addHousehold(tank.household(), "Home");
    people.addTank(tank.household(), tank.tank(), "Reef", "Europe/Berlin");
  }

  @Test
  void eight_phones_a_month_offline_with_a_thousand_entries_each_are_of_one_mind_within_ten_seconds() throws Exception {
    List<Callable<List<String>>> phones = new ArrayList<>();
    List<String> all = new ArrayList<>();
    for (int phone = 0; phone < PHONES; phone++) {
      List<JsonNode> written = entries(1000);
      written.forEach(entry -> all.add(entry.path("id").asText()));
      phones.add(() -> {
        push(written);
        return List.of();
      });
    }
    Instant began = Instant.now();
    atOnce(phones);
    List<List<String>> copies = atOnce(Collections.nCopies(PHONES, () -> pulled().stream().map(Stored::id).toList()));
    Duration took = Duration.between(began, Instant.now());

    System.out.println("8 phones of 1,000 entries: of one mind after " + took.toMillis() + " ms");
    assertThat(copies.get(0)).containsExactlyInAnyOrderElementsOf(all);
    assertThat(copies).allSatisfy(copy -> assertThat(copy).isEqualTo(copies.get(0)));
    assertThat(took).isLessThan(Duration.ofSeconds(10));
  }

  @Test
  void batches_that_come_one_to_five_times_on_eight_threads_are_kept_once() throws Exception {
    long seed = Long.getLong("faults.seed", System.nanoTime());
    Random random = new Random(seed);
    List<JsonNode> all = entries(HowLong.times(400, 4000));
    List<Callable<List<Answer>>> deliveries = new ArrayList<>();
    for (int from = 0; from < all.size(); from += 10) {
      List<JsonNode> batch = all.subList(from, from + 10);
      deliveries.addAll(Collections.nCopies(1 + random.nextInt(5), () -> push(batch)));
    }
    Collections.shuffle(deliveries, random);
    long accepted = atOnce(deliveries).stream().flatMap(List::stream).filter(one -> one.outcome() == Answer.Outcome.ACCEPTED).count();

    assertThat(accepted).as("seed " + seed).isEqualTo(all.size());
    assertThat(pulled()).extracting(Stored::id)
        .containsExactlyInAnyOrderElementsOf(all.stream().map(entry -> entry.path("id").asText()).toList());
  }

  @Test
  void a_reader_beside_eight_writers_misses_none_and_sees_none_twice() throws Exception {
    int each = HowLong.times(400, 12_500);
    ExecutorService threads = Executors.newFixedThreadPool(PHONES);
    List<Future<?>> writers = new ArrayList<>();
    for (int phone = 0; phone < PHONES; phone++) {
      List<JsonNode> written = entries(each);
      writers.add(threads.submit(() -> {
        for (int from = 0; from < each; from += 5) {
          push(written.subList(from, from + 5));
        }
      }));
    }
    List<Long> seen = new ArrayList<>();
    // Until all have written and nothing is left: a reader that missed one must end, and be told of it below.
    boolean writing = true;
    boolean more = true;
    while (writing || more) {
      writing = !writers.stream().allMatch(Future::isDone);
      long after = seen.isEmpty() ? 0 : seen.get(seen.size() - 1);
      List<Stored> page = new Pull(journals).after(tank, after, Pull.MOST_ENTRIES).entries();
      page.forEach(stored -> seen.add(stored.seq()));
      more = !page.isEmpty();
      // On a machine of two cores a reader without a pause would be most of what the writers wait for.
      Thread.sleep(2);
    }
    for (Future<?> writer : writers) {
      writer.get();
    }
    threads.shutdown();
    assertThat(seen).containsExactlyElementsOf(LongStream.rangeClosed(1, (long) PHONES * each).boxed().toList());
  }

  private List<Answer> push(List<JsonNode> entries) {
    List<Answer> answers = new ArrayList<>();
    for (int from = 0; from < entries.size(); from += BATCH) {
      List<JsonNode> batch = entries.subList(from, Math.min(entries.size(), from + BATCH));
      answers.addAll(new Push(journals).take(tank, batch, by -> true, Instant.now()).answers());
    }
    return answers;
  }

  private List<Stored> pulled() {
    List<Stored> all = new ArrayList<>();
    List<Stored> page = new Pull(journals).after(tank, 0, Pull.MOST_ENTRIES).entries();
    while (!page.isEmpty()) {
      all.addAll(page);
      page = new Pull(journals).after(tank, all.get(all.size() - 1).seq(), Pull.MOST_ENTRIES).entries();
    }
    return all;
  }

  private List<JsonNode> entries(int count) {
    String device = UUID.randomUUID().toString();
    return LongStream.rangeClosed(1, count)
        .mapToObj(i -> (JsonNode) Phone.feeding(UUID.randomUUID().toString(), tank.tank(), device, i, "teo"))
        .toList();
  }

  private static <T> List<T> atOnce(List<Callable<T>> work) throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(PHONES);
    List<T> results = new ArrayList<>();
    for (Future<T> done : threads.invokeAll(work)) {
      results.add(done.get());
    }
    threads.shutdown();
    return results;
  }
}
