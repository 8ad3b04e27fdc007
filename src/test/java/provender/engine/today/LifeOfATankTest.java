package provender.engine.today;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static provender.engine.Log.helping;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import provender.engine.Log;

/** One tank from its first fish to a mended diet, told in order. */
class LifeOfATankTest {

  @Test
  void a_tank_is_set_up_fed_corrected_neglected_and_put_right() {
    Log log = new Log().tank(27, "nori_dried", "mysis_frozen");
    assertThat(number(log.today(0, "08:00"), "ration", "dueKj", "value")).isZero();

    // The first fish: 100 g at 27 °C need 40 × 0.1^0.80 = 6.340 kJ times the factor of its guild.
    log.fish("tang", "Zebrasoma flavescens", 100);
    double due = number(log.today(0, "08:00"), "ration", "dueKj", "value");
    double factor = java.util.Objects.requireNonNull(Log.REFERENCE.guild("turf_grazer")).rationFactor();
    assertThat(due).isEqualTo(6.340 * factor, offset(0.001));

    // Fed well for a week: nothing to complain of.
    log.fedDaily(0, 7, "09:00", helping("nori_dried", 0.6));
    assertThat(log.rules(7)).isEmpty();
    assertThat(number(log.today(7, "21:00"), "ration", "givenKj", "value")).isPositive();

    // A feeding too many, withdrawn and brought back.
    log.fed(7, "18:00", helping("nori_dried", 0.6));
    String second = log.last();
    double twice = number(log.today(7, "21:00"), "ration", "givenKj", "value");
    log.entry("withdrawal", 7, "18:01", Map.of("entry", second, "withdrawn", true));
    assertThat(number(log.today(7, "21:00"), "ration", "givenKj", "value")).isEqualTo(twice / 2, offset(1e-9));
    log.entry("withdrawal", 7, "18:02", Map.of("entry", second, "withdrawn", false));
    assertThat(number(log.today(7, "21:00"), "ration", "givenKj", "value")).isEqualTo(twice, offset(1e-9));

    // What was left over does not count as eaten, nor as given to the fish.
    log.entry("amendment", 7, "19:00", Map.of("entry", second, "set", Map.of("body.leftoverGrams", 0.6)));
    assertThat(number(log.today(7, "21:00"), "ration", "givenKj", "value")).isEqualTo(twice / 2, offset(1e-9));

    // A holiday stand-in offers only shrimp: on the second day without algae it is found, with what to offer.
    log.fedDaily(8, 9, "09:00", helping("mysis_frozen", 2));
    assertThat(log.findings(9)).filteredOn(finding -> "no-algae".equals(finding.get("rule"))).singleElement().satisfies(finding -> {
      assertThat(finding.get("fish")).isEqualTo(List.of("tang"));
      assertThat(finding.get("days")).isEqualTo(2.0);
      assertThat((List<?>) finding.get("offer")).isNotEmpty();
    });

    // Nori comes back, and the finding goes.
    log.fed(10, "09:00", helping("nori_dried", 0.6));
    assertThat(log.rules(10)).doesNotContain("no-algae");

    // It is measured, and moves out: the ration is nothing again.
    log.saw(11, "tang", "weight", Map.of("grams", 120.0));
    assertThat(number(log.today(11, "21:00"), "ration", "dueKj", "value")).isGreaterThan(due);
    log.record("fish", "tang", Map.of("status", "moved"));
    assertThat(number(log.today(12, "21:00"), "ration", "dueKj", "value")).isZero();
  }

  @SuppressWarnings("unchecked")
  private static double number(Map<String, Object> today, String... path) {
    Object found = today;
    for (String name : path) {
      found = ((Map<String, Object>) found).get(name);
    }
    return (Double) found;
  }
}
