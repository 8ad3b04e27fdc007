package provender.sync;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import provender.Phone;

/** What every journal store must do; each store has a test class that inherits all of it. */
public abstract class JournalStoreContract {
  private static final Instant NOW = Instant.parse("2026-06-15T06:10:05Z");
  private static final int THREADS = 8;
  private static final String ONE = UUID.randomUUID().toString();
  private static final String OTHER = UUID.randomUUID().toString();

  private final String device = UUID.randomUUID().toString();
  private long lastSeq;

  protected abstract JournalStore store();

  /** A tank of its own for each test. */
  protected abstract TankKey tank();

  @Test
  void entries_get_places_from_one_without_gaps_and_come_back_in_them_as_they_were_sent() {
    List<JsonNode> sent = entries(5);
    push(sent);

    JournalStore.Page page = store().read(tank(), 0, 500);
    assertThat(page.entries()).extracting(JournalStore.Stored::seq).containsExactly(1L, 2L, 3L, 4L, 5L);
    assertThat(page.entries()).extracting(JournalStore.Stored::written)
        .containsExactlyElementsOf(sent.stream().map(JsonNode::toString).toList());
    assertThat(page.position().head()).isEqualTo(5);
  }

  @Test
  void the_same_entry_again_is_a_duplicate_and_keeps_its_place() {
    List<JsonNode> sent = entries(3);
    push(sent);

    assertThat(push(sent).answers()).extracting(Answer::outcome).containsOnly(Answer.Outcome.DUPLICATE);
    assertThat(push(sent).answers()).extracting(Answer::seq).containsExactly(1L, 2L, 3L);
    assertThat(store().position(tank()).head()).isEqualTo(3);
  }

  @Test
  void what_was_kept_is_known_again_when_its_keeper_has_left_since() {
    List<JsonNode> sent = entries(2);
    push(sent);

    assertThat(new Push(store()).take(tank(), sent, keeper -> false, NOW).answers()).extracting(Answer::outcome)
        .containsOnly(Answer.Outcome.DUPLICATE);
    assertThat(new Push(store()).take(tank(), entries(1), keeper -> false, NOW).answers()).extracting(Answer::outcome)
        .containsOnly(Answer.Outcome.REFUSED);
  }

  @Test
  void another_entry_under_a_known_id_is_refused_and_the_first_stands() {
    ObjectNode first = (ObjectNode) entries(1).get(0);
    push(List.of(first));
    ObjectNode other = first.deepCopy().put("kind", "observation");

    Answer answer = push(List.of(other)).answers().get(0);
    assertThat(answer.outcome()).isEqualTo(Answer.Outcome.REFUSED);
    assertThat(answer.faults()).extracting(Answer.Fault::field).containsExactly("id");
    assertThat(store().read(tank(), 0, 500).entries()).singleElement()
        .extracting(JournalStore.Stored::written).isEqualTo(first.toString());
  }

  @Test
  void a_bad_entry_is_refused_for_itself_and_the_others_of_its_batch_are_kept() {
    List<JsonNode> batch = entries(3);
    ((ObjectNode) batch.get(1)).put("happenedAt", "yesterday");

    assertThat(push(batch).answers()).extracting(Answer::outcome)
        .containsExactly(Answer.Outcome.ACCEPTED, Answer.Outcome.REFUSED, Answer.Outcome.ACCEPTED);
    assertThat(store().position(tank()).head()).isEqualTo(2);
  }

  @Test
  void work_that_fails_leaves_nothing_behind() {
    assertThatThrownBy(() -> store().write(tank(), writing -> {
      writing.append(envelope(entries(1).get(0)), NOW);
      throw new IllegalStateException("power cut");
    })).hasMessageContaining("power cut");

    assertThat(store().position(tank()).head()).isZero();
    assertThat(store().read(tank(), 0, 500).entries()).isEmpty();
  }

  @Test
  void pages_follow_one_another_without_loss_or_overlap() {
    push(entries(23));

    List<Long> seen = new ArrayList<>();
    for (long after = 0; after < 23; after = seen.get(seen.size() - 1)) {
      store().read(tank(), after, 5).entries().forEach(stored -> seen.add(stored.seq()));
    }
    assertThat(seen).containsExactlyElementsOf(LongStream.rangeClosed(1, 23).boxed().toList());
  }

  @Test
  void eight_threads_sending_the_same_entries_have_each_kept_once() throws Exception {
    List<JsonNode> sent = entries(40);
    Callable<Object> work = () -> {
      List<JsonNode> shuffled = new ArrayList<>(sent);
      Collections.shuffle(shuffled);
      for (JsonNode entry : shuffled) {
        push(List.of(entry));
      }
      return "";
    };
    var threads = Executors.newFixedThreadPool(THREADS);
    for (var done : threads.invokeAll(Collections.nCopies(THREADS, work))) {
      done.get();
    }
    threads.shutdown();

    List<JournalStore.Stored> kept = store().read(tank(), 0, 500).entries();
    assertThat(kept).extracting(JournalStore.Stored::id)
        .containsExactlyInAnyOrderElementsOf(sent.stream().map(entry -> entry.path("id").asText()).toList());
    assertThat(kept).extracting(JournalStore.Stored::seq)
        .containsExactlyElementsOf(LongStream.rangeClosed(1, 40).boxed().toList());
  }

  @Test
  void a_change_that_can_harm_by_someone_who_had_not_seen_what_stands_is_kept_and_waits() {
    push(List.of(switched(ONE, true, 0)));
    push(List.of(switched(ONE, false, 1)));
    JsonNode blind = switched(OTHER, true, 1);

    Answer answer = push(List.of(blind)).answers().get(0);
    assertThat(answer.outcome()).isEqualTo(Answer.Outcome.CONFLICTED);
    assertThat(answer.fields()).containsExactly("running");
    assertThat(answer.seq()).isEqualTo(3);
    assertThat(store().read(tank(), 2, 500).entries()).singleElement()
        .extracting(JournalStore.Stored::written).isEqualTo(blind.toString());
    assertThat(push(List.of(switched(OTHER, true, 3))).answers().get(0).outcome()).isEqualTo(Answer.Outcome.ACCEPTED);
  }

  @Test
  void two_such_changes_in_one_batch_are_held_against_each_other() {
    assertThat(push(List.of(switched(ONE, true, 0), switched(OTHER, false, 0), switched(OTHER, false, 2))).answers())
        .extracting(Answer::outcome)
        .containsExactly(Answer.Outcome.ACCEPTED, Answer.Outcome.CONFLICTED, Answer.Outcome.ACCEPTED);
  }

  @Test
  void whoever_does_not_say_what_they_saw_has_seen_nothing() {
    push(List.of(switched(ONE, true, 0)));
    ObjectNode silent = switched(OTHER, false, 1);
    silent.withObject("/body").remove("saw");
    assertThat(push(List.of(silent)).answers().get(0).outcome()).isEqualTo(Answer.Outcome.CONFLICTED);
  }

  @Test
  void a_change_that_was_taken_back_stands_in_nobodys_way() {
    JsonNode first = switched(ONE, true, 0);
    ObjectNode withdrawal = Phone.feeding(UUID.randomUUID().toString(), tank().tank(), ONE, ++lastSeq, "teo").put("kind", "withdrawal");
    withdrawal.putObject("body").put("entry", first.path("id").asText()).put("withdrawn", true);
    push(List.of(first, withdrawal));
    assertThat(push(List.of(switched(OTHER, false, 0))).answers().get(0).outcome()).isEqualTo(Answer.Outcome.ACCEPTED);
  }

  @Test
  void a_page_adds_up_to_what_its_entries_do_and_the_sums_of_pages_to_the_whole() {
    List<JsonNode> sent = entries(23);
    push(sent);

    long whole = 0;
    for (int i = 0; i < sent.size(); i++) {
      whole = Checksum.sum(whole, Checksum.of(sent.get(i), i + 1));
    }
    assertThat(store().read(tank(), 0, 500).checksum()).isEqualTo(whole);
    List<JournalStore.Sum> sums = store().sums(tank(), 10);
    assertThat(sums).extracting(JournalStore.Sum::from).containsExactly(1L, 11L, 21L);
    assertThat(sums).extracting(JournalStore.Sum::to).containsExactly(10L, 20L, 23L);
    assertThat(sums).extracting(JournalStore.Sum::count).containsExactly(10L, 10L, 3L);
    assertThat(sums.stream().mapToLong(JournalStore.Sum::checksum).reduce(0, Checksum::sum)).isEqualTo(whole);
    assertThat(store().read(tank(), 10, 10).checksum()).isEqualTo(sums.get(1).checksum());
  }

  @Test
  void an_entry_of_a_later_version_with_unknown_fields_is_kept_as_it_was_sent() {
    ObjectNode entry = ((ObjectNode) entries(1).get(0)).put("kind", "moonlight").put("v", 99).put("later", "🌙");
    entry.putObject("body").put("lux", 0.25).putArray("deep").addArray().addObject().putNull("nothing");
    assertThat(push(List.of(entry)).answers().get(0).outcome()).isEqualTo(Answer.Outcome.ACCEPTED);
    assertThat(store().read(tank(), 0, 500).entries()).singleElement()
        .extracting(JournalStore.Stored::written).isEqualTo(entry.toString());
  }

  @Test
  void an_entry_sent_again_with_the_place_it_was_given_is_the_same_entry() {
    ObjectNode entry = (ObjectNode) entries(1).get(0);
    push(List.of(entry));
    ObjectNode again = entry.deepCopy().put("seq", 1).put("receivedAt", NOW.toString());
    assertThat(push(List.of(again)).answers().get(0).outcome()).isEqualTo(Answer.Outcome.DUPLICATE);
  }

  private ObjectNode switched(String phone, boolean running, long saw) {
    return Phone.switched(tank().tank(), phone, ++lastSeq, "teo", running, saw);
  }

  private Push.Result push(List<JsonNode> entries) {
    return new Push(store()).take(tank(), entries, keeper -> keeper.equals("teo"), NOW);
  }

  private Envelope envelope(JsonNode entry) {
    return new EnvelopeReader(entry).read(tank().tank(), keeper -> true);
  }

  private List<JsonNode> entries(int count) {
    List<JsonNode> entries = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      entries.add(Phone.feeding(UUID.randomUUID().toString(), tank().tank(), device, ++lastSeq, "teo"));
    }
    return entries;
  }
}
