package provender.demo;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import provender.contract.TankBook;
import provender.demo.DemoScenario.DemoTank;
import provender.engine.node.MapNode;
import provender.engine.node.Node;
import provender.engine.reference.Reference;
import provender.reference.ReferenceFiles;

class DemoTroublesTest {
  private static final Reference REFERENCE = Reference.of(new MapNode(ReferenceFiles.onClasspath().read()));
  private static final DemoScenario SCENARIO = DemoScenario.read();

  @ParameterizedTest
  @ValueSource(strings = {"06:30", "12:15", "20:30"})
  void every_planted_trouble_is_found_and_nothing_else(String time) {
    List<Map<String, Object>> findings = findings(tank(0), time);
    assertThat(findings)
        .extracting(finding -> finding.get("rule"))
        .containsExactlyInAnyOrder("no-sponge", "no-algae", "no-hard-food", "too-little-food", "too-much-food", "nitrate-rises", "phosphate-jump");
  }

  @Test
  void each_trouble_names_its_fish_since_when_why_and_what_to_offer() {
    for (Map<String, Object> finding : findings(tank(0), "12:15")) {
      assertThat((List<?>) finding.get("why")).isNotEmpty();
      assertThat((List<?>) finding.get("source")).isNotEmpty();
      assertThat((Double) finding.get("days")).isPositive();
      boolean display = List.of("too-little-food", "nitrate-rises", "phosphate-jump").contains(finding.get("rule"));
      assertThat((List<?>) finding.get("fish")).matches(fish -> fish.isEmpty() == display);
      if (!List.of("too-much-food", "nitrate-rises", "phosphate-jump").contains(finding.get("rule"))) {
        assertThat((List<?>) finding.get("offer"))
            .isNotEmpty()
            .allSatisfy(offer -> assertThat((Double) ((Map<?, ?>) offer).get("grams")).isPositive());
      }
    }
  }

  @Test
  void the_overfed_fish_is_the_newcomer_in_isolation() {
    assertThat(findings(tank(0), "12:15"))
        .filteredOn(finding -> finding.get("rule").equals("too-much-food"))
        .singleElement()
        .satisfies(finding -> assertThat((List<?>) finding.get("fish")).hasSize(1));
  }

  @Test
  void sponge_has_been_missing_for_nine_days() {
    assertThat(findings(tank(0), "12:15"))
        .filteredOn(finding -> finding.get("rule").equals("no-sponge"))
        .singleElement()
        .satisfies(finding -> assertThat((Double) finding.get("days")).isEqualTo(9));
  }

  @ParameterizedTest
  @ValueSource(strings = {"06:30", "12:15", "20:30"})
  void the_healthy_tank_has_no_findings(String time) {
    assertThat(findings(tank(1), time)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"08:45", "20:30"})
  void every_trouble_of_feeders_and_water_is_found_and_nothing_else(String time) {
    assertThat(findings(tank(2), time))
        .extracting(finding -> finding.get("rule") + " " + finding.getOrDefault("about", ""))
        .containsExactlyInAnyOrder("feeder-jam north", "feeder-drift east", "hopper-low south", "feeder-unweighed west", "ammonia ",
            "phosphate-rises ", "nitrate-jump ");
  }

  @Test
  void the_tub_of_unknown_volume_is_asked_about_and_about_nothing_else() {
    assertThat(findings(SCENARIO.households().get(2).tanks().get(1), "20:30")).extracting(finding -> finding.get("rule")).containsExactly("no-volume");
  }

  private static DemoTank tank(int household) {
    return SCENARIO.households().get(household).tanks().get(0);
  }

  @SuppressWarnings("unchecked")
  private static List<Map<String, Object>> findings(DemoTank tank, String time) {
    ZonedDateTime now = ZonedDateTime.of(LocalDate.of(2026, 6, 15), LocalTime.parse(time), ZoneId.of(tank.zone()));
    List<Node> entries = new ArrayList<>();
    for (JsonNode entry : SCENARIO.entries(tank, Instant.from(now))) {
      entries.add(new MapNode(DemoScenario.JSON.convertValue(entry, new TypeReference<Map<String, Object>>() {})));
    }
    TankBook book = new TankBook(REFERENCE);
    book.take(entries);
    Map<String, Object> today = book.today(now.format(DateTimeFormatter.ISO_OFFSET_DATE_TIME));
    return (List<Map<String, Object>>) today.get("findings");
  }
}
