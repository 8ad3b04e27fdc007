package provender.engine.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static provender.engine.Log.helping;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import provender.engine.Log;
import provender.engine.node.Node;

class AnyOrderTest {
  private final Log log = log();

  private static Log log() {
    Log log = new Log().tank(26, "mysis_frozen", "nori_dried").fish("tang", "Zebrasoma flavescens", 80)
        .fish("angel", "Pomacanthus imperator", 400).fedDaily(0, 6, "08:00", helping("mysis_frozen", 5), helping("nori_dried", 1));
    String fed = log.last();
    log.entry("amendment", 6, "09:00", Map.of("entry", fed, "set", Map.of("body.leftoverGrams", 1.0)));
    log.entry("amendment", 6, "09:05", Map.of("entry", fed, "set", Map.of("body.leftoverGrams", 2.0)));
    log.fed(6, "10:00", helping("krill_frozen", 3));
    log.entry("withdrawal", 6, "10:01", Map.of("entry", log.last(), "withdrawn", true));
    log.entry("record", 6, "11:00", Map.of("record", "fish", "key", "angel", "set", Map.of("weightGrams", 420.0)));
    log.entry("kind-of-a-later-day", 6, "12:00", Map.of("what", "nobody knows"));
    return log.saw(6, "tang", "length", Map.of("cm", 14.0));
  }

  @Property(tries = 60)
  void whatever_order_entries_arrive_in_and_however_often_the_day_is_the_same(@ForAll Random random) {
    List<Node> shuffled = new ArrayList<>(log.nodes());
    shuffled.addAll(log.nodes().subList(0, 6));
    Collections.shuffle(shuffled, random);
    assertThat(Log.today(shuffled, 6, "20:00")).isEqualTo(log.today(6, "20:00"));
  }

  @Test
  @SuppressWarnings("unchecked")
  void the_later_amendment_stands_and_a_feeding_taken_back_does_not_count() {
    Map<String, Object> today = log.today(6, "20:00");
    List<Map<String, Object>> feedings = (List<Map<String, Object>>) today.get("feedings");
    assertThat(feedings).hasSize(3);
    assertThat(feedings.get(0)).containsEntry("leftoverGrams", 2.0).containsEntry("corrected", true);
    assertThat((List<?>) today.get("withdrawn")).hasSize(1);
  }

  @Test
  void an_entry_dated_tomorrow_by_a_wrong_clock_waits_for_its_day() {
    Log early = log().fed(7, "08:00", helping("mysis_frozen", 50));
    assertThat(early.today(6, "20:00").get("ration")).isEqualTo(log.today(6, "20:00").get("ration"));
    assertThat(early.today(7, "20:00").get("ration")).isNotEqualTo(log.today(7, "20:00").get("ration"));
  }

  @Test
  void an_entry_whose_time_nobody_can_read_changes_nothing() {
    Log damaged = log();
    List<Node> nodes = new ArrayList<>(damaged.nodes());
    nodes.add(new provender.engine.node.MapNode(Map.of("id", "bad", "kind", "feeding", "happenedAt", "yesterday", "seq", 99.0,
        "body", Map.of("items", List.of(helping("mysis_frozen", 9))))));
    assertThat(Log.today(nodes, 6, "20:00")).isEqualTo(log.today(6, "20:00"));
  }
}
