package provender.engine.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import provender.engine.Log;
import provender.engine.node.MapNode;

/** Two phones that change what feeds fish while nobody looks. */
class ConflictTest {
  private final Journal journal = new Journal(Log.REFERENCE);
  private int written;

  /** A change with the place the server gave it (0: still on the phone), and what its writer had seen of the field. */
  private String change(String device, double seq, Map<String, Object> set, double saw) {
    Map<String, Object> seen = new HashMap<>();
    set.keySet().forEach(field -> seen.put(field, saw));
    String id = "e" + written++;
    journal.take(new MapNode(Map.of("id", id, "kind", "record", "device", device, "deviceSeq", (double) written, "by", device, "seq", seq,
        "happenedAt", "2026-06-15T08:1" + written + ":00+02:00",
        "body", Map.of("record", "feeder", "key", "left", "set", set, "saw", seen))));
    return id;
  }

  private boolean running() {
    return journal.feeders().get(0).settings().get(journal.feeders().get(0).settings().size() - 1).running();
  }

  @Test
  void who_had_seen_what_stood_changes_it() {
    change("one", 1, Map.of("running", true), 0);
    change("two", 2, Map.of("running", false), 1);
    assertThat(running()).isFalse();
    assertThat(journal.conflicts()).isEmpty();
  }

  @Test
  void who_had_not_seen_it_leaves_it_standing_and_a_person_decides() {
    change("one", 1, Map.of("running", true), 0);
    String stop = change("one", 2, Map.of("running", false), 1);
    String blind = change("two", 3, Map.of("running", true), 1);
    assertThat(running()).isFalse();
    assertThat(journal.conflicts()).containsExactly(
        new Conflict("feeder", "left", "running", new Conflict.Side(stop, "one", false), new Conflict.Side(blind, "two", true), 3));

    change("three", 4, Map.of("running", true), 3);
    assertThat(running()).isTrue();
    assertThat(journal.conflicts()).isEmpty();
  }

  @Test
  void a_decision_for_what_stands_ends_it_too() {
    change("one", 1, Map.of("running", true), 0);
    change("two", 2, Map.of("running", false), 0);
    assertThat(running()).isTrue();
    change("three", 3, Map.of("running", true), 2);
    assertThat(running()).isTrue();
    assertThat(journal.conflicts()).isEmpty();
  }

  @Test
  void a_decision_that_saw_only_the_first_of_two_leaves_the_second_open() {
    change("one", 1, Map.of("running", true), 0);
    change("two", 2, Map.of("running", false), 0);
    change("three", 3, Map.of("running", false), 1);
    String last = change("four", 4, Map.of("running", true), 2);
    assertThat(running()).isFalse();
    assertThat(journal.conflicts()).singleElement().extracting(one -> one.other().entry()).isEqualTo(last);
    change("five", 5, Map.of("running", true), 4);
    assertThat(running()).isTrue();
    assertThat(journal.conflicts()).isEmpty();
  }

  @Test
  void the_same_phone_has_always_seen_itself_even_unsent() {
    change("one", 1, Map.of("drops", List.of(1.0)), 0);
    change("one", 0, Map.of("drops", List.of(2.0)), 1);
    change("one", 0, Map.of("drops", List.of(3.0)), 1);
    assertThat(journal.conflicts()).isEmpty();
  }

  @Test
  void fields_that_harm_nobody_follow_the_later_change() {
    change("one", 1, Map.of("name", "Left"), 0);
    change("two", 2, Map.of("name", "Port side"), 0);
    assertThat(journal.feeders().get(0).name()).isEqualTo("Port side");
    assertThat(journal.conflicts()).isEmpty();
  }

  @Test
  void what_stands_in_guarded_fields_is_told_with_its_place() {
    change("one", 5, Map.of("running", true, "name", "Left"), 0);
    assertThat(journal.guarded()).singleElement().satisfies(one -> {
      assertThat(one.field()).isEqualTo("running");
      assertThat(one.place()).isEqualTo(5);
    });
  }
}
