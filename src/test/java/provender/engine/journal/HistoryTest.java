package provender.engine.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import provender.engine.Log;
import provender.engine.node.MapNode;

class HistoryTest {
  private final Journal journal = new Journal(Log.REFERENCE);

  private void take(String id, String kind, String by, double seq, Map<String, ?> body) {
    journal.take(new MapNode(Map.of("id", id, "kind", kind, "by", by, "device", by, "seq", seq,
        "happenedAt", "2026-06-15T08:10:00+02:00", "recordedAt", "2026-06-15T06:10:0" + (int) seq + "Z", "body", body)));
  }

  @Test
  void every_hand_on_an_entry_is_told_in_the_servers_order_whatever_order_they_arrived_in() {
    take("w2", "withdrawal", "teo", 5, Map.of("entry", "f", "withdrawn", false));
    take("a2", "amendment", "maren", 3, Map.of("entry", "f", "set", Map.of("body.leftoverGrams", 2.0)));
    take("f", "feeding", "teo", 1, Map.of("leftoverGrams", 0.0));
    take("w1", "withdrawal", "maren", 4, Map.of("entry", "f", "withdrawn", true));
    take("a1", "amendment", "teo", 2, Map.of("entry", "f", "set", Map.of("body.leftoverGrams", 1.0)));

    assertThat(journal.history("f")).extracting(one -> one.text("id", "")).containsExactly("f", "a1", "a2", "w1", "w2");
    assertThat(journal.history("f")).extracting(one -> one.text("by", "")).containsExactly("teo", "teo", "maren", "maren", "teo");
    assertThat(journal.history("f")).extracting(one -> one.number("seq", 0)).containsExactly(1.0, 2.0, 3.0, 4.0, 5.0);
  }

  @Test
  void an_amendment_that_comes_after_a_withdrawal_does_not_bring_the_entry_back() {
    take("f", "feeding", "teo", 1, Map.of());
    take("w", "withdrawal", "maren", 2, Map.of("entry", "f", "withdrawn", true));
    take("a", "amendment", "teo", 3, Map.of("entry", "f", "set", Map.of("body.leftoverGrams", 1.0)));
    assertThat(journal.feedingsSince(provender.engine.quantity.Day.of(0))).isEmpty();
    assertThat(journal.history("f")).hasSize(3);
  }

  @Test
  void an_entry_nobody_knows_has_no_history() {
    assertThat(journal.history("never")).isEmpty();
  }
}
