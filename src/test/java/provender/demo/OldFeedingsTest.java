package provender.demo;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import provender.contract.TankBook;
import provender.demo.DemoScenario.DemoTank;
import provender.engine.node.MapNode;
import provender.engine.node.Node;
import provender.engine.reference.Reference;
import provender.reference.ReferenceFiles;

/** What a phone relies on when it reads only the late feedings of a long journal. */
class OldFeedingsTest {
  private static final Reference REFERENCE = Reference.of(new MapNode(ReferenceFiles.onClasspath().read()));
  private static final DemoScenario SCENARIO = DemoScenario.read();

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2})
  void a_day_reads_the_same_without_the_feedings_from_before_its_look_back(int household) {
    DemoTank tank = SCENARIO.households().get(household).tanks().get(0);
    ZonedDateTime now = ZonedDateTime.of(2026, 6, 15, 20, 30, 0, 0, ZoneId.of(tank.zone()));
    List<Node> whole = entries(tank, now);
    for (int days : new int[] {0, 20, 60}) {
      ZonedDateTime later = now.plusDays(days);
      List<Node> late = without(whole, later.toLocalDate().minusDays(TankBook.LOOK_BACK_DAYS));
      String at = later.format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
      assertThat(book(late).today(at)).isEqualTo(book(whole).today(at));
      assertThat(book(late).water(at)).isEqualTo(book(whole).water(at));
      assertThat(days < 60 || late.size() < whole.size()).isTrue();
    }
  }

  /** All but the feedings before a day; the first one stays, because with it the log began. */
  private static List<Node> without(List<Node> entries, LocalDate first) {
    List<Node> late = new ArrayList<>();
    boolean begun = false;
    for (Node entry : entries) {
      boolean feeding = entry.text("kind", "").equals("feeding");
      if (!feeding || !begun || entry.text("happenedAt", "").compareTo(first.toString()) >= 0) {
        late.add(entry);
      }
      begun |= feeding;
    }
    return late;
  }

  private static TankBook book(List<Node> entries) {
    TankBook book = new TankBook(REFERENCE);
    book.take(entries);
    return book;
  }

  private static List<Node> entries(DemoTank tank, ZonedDateTime now) {
    List<Node> entries = new ArrayList<>();
    for (JsonNode entry : SCENARIO.entries(tank, now.toInstant())) {
      entries.add(new MapNode(DemoScenario.JSON.convertValue(entry, new TypeReference<Map<String, Object>>() {})));
    }
    entries.sort((one, other) -> one.text("happenedAt", "").compareTo(other.text("happenedAt", "")));
    return entries;
  }
}
