package provender.sync;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.UUID;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import provender.Phone;

/**
 * Phones and server through random schedules, against a plain model: the set of everything anyone ever wrote. A failing run
 * prints its seed.
 */
class SchedulesTest {
  private static final TankKey TANK = new TankKey("home", "reef");
  private static final OffsetDateTime NOON = OffsetDateTime.parse("2026-06-15T12:00:00+02:00");
  private static final int MOST_DAYS_WRONG = 400;
  private static final int PHONES = 3;

  /** A phone by its rules: what it wrote, what waits, what it pulled and how far. */
  private static final class Pocket {
    final String device = UUID.randomUUID().toString();
    final List<ObjectNode> waiting = new ArrayList<>();
    final Map<Long, String> pulled = new TreeMap<>();
    long cursor;
    long taps;
  }

  private final MemoryJournalStore journals = new MemoryJournalStore();
  private final List<Pocket> phones = List.of(new Pocket(), new Pocket(), new Pocket());
  private final Map<String, String> everWritten = new TreeMap<>();

  @Property(tries = 1000, shrinking = ShrinkingMode.BOUNDED)
  void whatever_is_split_repeated_reordered_or_lost_everything_is_there_once_and_all_copies_are_equal(
      @ForAll @Size(min = 1, max = 60) List<@IntRange(max = 1_000_000) Integer> schedule) {
    SchedulesTest run = new SchedulesTest();
    schedule.forEach(step -> run.step(new Random(step)));
    run.phones.forEach(run::finish);
    run.phones.forEach(run::pull);

    Map<Long, String> copy = run.phones.get(0).pulled;
    assertThat(copy.values()).containsExactlyInAnyOrderElementsOf(run.everWritten.values());
    assertThat(run.phones).allSatisfy(phone -> {
      assertThat(phone.pulled).isEqualTo(copy);
      assertThat(phone.waiting).isEmpty();
    });
    assertThat(new ArrayList<>(copy.keySet())).isEqualTo(upTo(copy.size()));
  }

  private void step(Random random) {
    Pocket phone = phones.get(random.nextInt(PHONES));
    switch (random.nextInt(4)) {
      case 0, 1 -> tap(phone, random);
      case 2 -> push(phone, random);
      default -> pull(phone);
    }
  }

  /** With a clock that may be far off either way. */
  private void tap(Pocket phone, Random random) {
    String id = UUID.randomUUID().toString();
    ObjectNode entry = Phone.feeding(id, TANK.tank(), phone.device, ++phone.taps, "teo");
    entry.put("happenedAt", NOON.plusDays(random.nextInt(2 * MOST_DAYS_WRONG + 1) - MOST_DAYS_WRONG).toString());
    phone.waiting.add(entry);
    everWritten.put(id, entry.toString());
  }

  /** Any part of the queue, in any order, up to five times; one answer in three is lost after the commit. */
  private void push(Pocket phone, Random random) {
    List<ObjectNode> part = new ArrayList<>(phone.waiting.subList(0, random.nextInt(phone.waiting.size() + 1)));
    Collections.shuffle(part, random);
    List<Answer> answers = List.of();
    for (int i = random.nextInt(5); i >= 0; i--) {
      answers = new Push(journals).take(TANK, List.<JsonNode>copyOf(part), by -> true, Instant.now()).answers();
    }
    if (random.nextInt(3) > 0) {
      List<String> kept = answers.stream().map(Answer::id).toList();
      phone.waiting.removeIf(entry -> kept.contains(entry.path("id").asText()));
    }
  }

  private void finish(Pocket phone) {
    for (Answer answer : new Push(journals).take(TANK, List.<JsonNode>copyOf(phone.waiting), by -> true, Instant.now()).answers()) {
      assertThat(answer.outcome()).isIn(Answer.Outcome.ACCEPTED, Answer.Outcome.DUPLICATE);
    }
    phone.waiting.clear();
  }

  private void pull(Pocket phone) {
    JournalStore.Page page = new Pull(journals).after(TANK, phone.cursor, 7);
    while (!page.entries().isEmpty()) {
      for (JournalStore.Stored stored : page.entries()) {
        phone.pulled.put(stored.seq(), stored.written());
        phone.cursor = stored.seq();
      }
      page = new Pull(journals).after(TANK, phone.cursor, 7);
    }
  }

  private static List<Long> upTo(int count) {
    List<Long> places = new ArrayList<>();
    for (long seq = 1; seq <= count; seq++) {
      places.add(seq);
    }
    return places;
  }
}
