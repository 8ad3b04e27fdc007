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
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
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

  /** A phone by its rules: what it wrote, what waits, what was refused, what it pulled and how far. */
  private static final class Pocket {
    final String device = UUID.randomUUID().toString();
    final List<ObjectNode> wrote = new ArrayList<>();
    final List<ObjectNode> waiting = new ArrayList<>();
    final Set<String> refused = new TreeSet<>();
    final Map<Long, String> pulled = new TreeMap<>();
    String epoch = "";
    long cursor;
    long taps;
  }

  private final MemoryJournalStore journals = new MemoryJournalStore();
  private final List<Pocket> phones = List.of(new Pocket(), new Pocket(), new Pocket());
  private final Map<String, String> everWritten = new TreeMap<>();
  private final Set<String> everSpoilt = new TreeSet<>();

  @Property(tries = 1000, shrinking = ShrinkingMode.BOUNDED)
  void whatever_is_split_repeated_reordered_or_lost_everything_is_there_once_and_all_copies_are_equal_and_add_up_alike(
      @ForAll @Size(min = 1, max = 60) List<@IntRange(max = 1_000_000) Integer> schedule) throws Exception {
    SchedulesTest run = new SchedulesTest();
    schedule.forEach(step -> run.step(new Random(step)));
    // The first sees whether a backup was put back; only then does each know what it has to send again.
    run.phones.forEach(run::pull);
    run.phones.forEach(run::finish);
    run.phones.forEach(run::pull);

    Map<Long, String> copy = run.phones.get(0).pulled;
    assertThat(copy.values()).containsExactlyInAnyOrderElementsOf(run.everWritten.values());
    assertThat(run.phones).allSatisfy(phone -> {
      assertThat(phone.pulled).isEqualTo(copy);
      assertThat(phone.waiting).isEmpty();
    });
    assertThat(run.phones.stream().flatMap(phone -> phone.refused.stream())).containsExactlyInAnyOrderElementsOf(run.everSpoilt);
    List<Long> places = new ArrayList<>(copy.keySet());
    assertThat(places).isEqualTo(upTo(copy.size()));
    WhatStands told = WhatStands.told(copy);
    assertThat(WhatStands.folded(copy, places)).isEqualTo(told);
    Collections.shuffle(places, new Random(schedule.size()));
    assertThat(WhatStands.folded(copy, places)).as("in whatever order they arrive").isEqualTo(told);
  }

  private void step(Random random) {
    Pocket phone = phones.get(random.nextInt(PHONES));
    switch (random.nextInt(13)) {
      case 0, 1, 2, 3, 4, 5 -> tap(phone, random);
      case 6, 7, 8 -> push(phone, random);
      case 9, 10, 11 -> pull(phone);
      default -> journals.restore(TANK, random.nextInt((int) journals.position(TANK).head() + 1));
    }
  }

  /** With a clock that may be far off either way; now and then a thing that no server could use. */
  private void tap(Pocket phone, Random random) {
    ObjectNode entry = written(phone, random);
    String id = entry.path("id").asText();
    entry.put("happenedAt", NOON.plusDays(random.nextInt(2 * MOST_DAYS_WRONG + 1) - MOST_DAYS_WRONG).toString());
    if (random.nextInt(10) == 0) {
      entry.put("happenedAt", "the day before");
      everSpoilt.add(id);
    } else {
      phone.wrote.add(entry);
      everWritten.put(id, entry.toString());
    }
    phone.waiting.add(entry);
  }

  /** A feeding, a change of one in any state, or a switch that may rest on something no longer true. */
  private ObjectNode written(Pocket phone, Random random) {
    long taps = ++phone.taps;
    if (random.nextInt(4) == 0) {
      return Phone.switched(TANK.tank(), phone.device, taps, "teo", random.nextBoolean(), random.nextLong(phone.cursor + 1));
    }
    ObjectNode entry = Phone.feeding(UUID.randomUUID().toString(), TANK.tank(), phone.device, taps, "teo");
    if (everWritten.isEmpty() || random.nextBoolean()) {
      return entry;
    }
    String about = List.copyOf(everWritten.keySet()).get(random.nextInt(everWritten.size()));
    if (random.nextBoolean()) {
      entry.put("kind", "withdrawal").putObject("body").put("entry", about).put("withdrawn", random.nextInt(3) > 0);
    } else {
      entry.put("kind", "amendment").putObject("body").put("entry", about).putObject("set").put("body.note", "later " + taps);
    }
    return entry;
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
      answers.forEach(answer -> answered(phone, answer));
    }
  }

  private static void answered(Pocket phone, Answer answer) {
    phone.waiting.removeIf(entry -> answer.id().equals(entry.path("id").asText()));
    if (answer.outcome() == Answer.Outcome.REFUSED) {
      phone.refused.add(answer.id());
    }
  }

  private void finish(Pocket phone) {
    new Push(journals).take(TANK, List.<JsonNode>copyOf(phone.waiting), by -> true, Instant.now()).answers().forEach(answer -> answered(phone, answer));
  }

  private void pull(Pocket phone) {
    JournalStore.Page page = new Pull(journals).after(TANK, phone.cursor, 7);
    if (!page.position().epoch().equals(phone.epoch)) {
      startAnew(phone, page.position().epoch());
      page = new Pull(journals).after(TANK, 0, 7);
    }
    while (!page.entries().isEmpty()) {
      for (JournalStore.Stored stored : page.entries()) {
        phone.pulled.put(stored.seq(), stored.written());
        phone.cursor = stored.seq();
      }
      page = new Pull(journals).after(TANK, phone.cursor, 7);
    }
  }

  /** A backup was put back: the copy counts no more, and all that was ever written here is sent again. */
  private static void startAnew(Pocket phone, String epoch) {
    phone.epoch = epoch;
    phone.pulled.clear();
    phone.cursor = 0;
    List<ObjectNode> spoilt = phone.waiting.stream().filter(entry -> !phone.wrote.contains(entry)).toList();
    phone.waiting.clear();
    phone.waiting.addAll(phone.wrote);
    phone.waiting.addAll(spoilt);
  }

  private static List<Long> upTo(int count) {
    List<Long> places = new ArrayList<>();
    for (long seq = 1; seq <= count; seq++) {
      places.add(seq);
    }
    return places;
  }
}
