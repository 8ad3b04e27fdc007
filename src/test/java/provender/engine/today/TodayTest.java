package provender.engine.today;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static provender.engine.Log.helping;
import static provender.engine.Told.at;
import static provender.engine.Told.list;
import static provender.engine.Told.number;
import static provender.engine.Told.one;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import provender.engine.Log;

/** What a day says, against figures worked by hand: 40 kJ kg^-0.80 at 27 °C, a lionfish has a factor of its guild's. */
class TodayTest {
  private static final String LIONFISH = "Pterois volitans";
  private static final String TANG = "Zebrasoma flavescens";
  private static final double NORI = requireNonNull(Log.REFERENCE.food("nori_dried")).kjPerGram();
  private static final double MYSIS = requireNonNull(Log.REFERENCE.food("mysis_frozen")).kjPerGram();
  private static final double GRAZER = requireNonNull(Log.REFERENCE.guild("turf_grazer")).rationFactor();

  private static Log tangs() {
    return new Log().tank(27, "nori_dried", "mysis_frozen").fish("tang", TANG, 100);
  }

  @Nested
  class Temperature {
    @ParameterizedTest
    @CsvSource({"19.9,outsideModel", "20,inRange", "30,inRange", "30.1,outsideModel", "32,outsideModel", "32.1,alarm"})
    void says_whether_the_model_holds_there(double celsius, String flag) {
      assertThat(new Log().tank(celsius).fish("tang", TANG, 100).today(0, "08:00").get("temperatureFlag")).isEqualTo(flag);
    }

    @Test
    void is_the_last_test_up_to_today_else_what_was_set_up_else_assumed() {
      Log log = tangs().entry("water-test", 2, "09:00", Map.of("temperatureC", 25.0)).entry("water-test", 3, "09:00", Map.of("nitrateMgL", 5.0))
          .entry("water-test", 5, "09:00", Map.of("temperatureC", 29.0));
      assertThat(number(log.today(1, "20:00"), "temperature", "value")).isEqualTo(27);
      assertThat(at(log.today(1, "20:00"), "temperature", "why", 0, "what")).isEqualTo("temperatureSetUp");
      assertThat(number(log.today(2, "20:00"), "temperature", "value")).isEqualTo(25);
      assertThat(at(log.today(4, "20:00"), "temperature", "basis")).isEqualTo("measured");
      assertThat(number(log.today(4, "20:00"), "temperature", "value")).isEqualTo(25);
      assertThat(number(log.today(5, "20:00"), "temperature", "value")).isEqualTo(29);
      log.entry("withdrawal", 5, "10:00", Map.of("entry", log.last(), "withdrawn", true));
      assertThat(number(log.today(6, "20:00"), "temperature", "value")).isEqualTo(25);
      Map<String, Object> unset = new Log().fish("tang", TANG, 100).today(0, "08:00");
      assertThat(number(unset, "temperature", "value")).isEqualTo(26);
      assertThat(at(unset, "temperature", "basis")).isEqualTo("assumed");
    }

    @Test
    void above_the_alarm_the_ration_is_reckoned_at_the_alarm() {
      double at32 = number(new Log().tank(32).fish("tang", TANG, 100).today(0, "08:00"), "ration", "dueKj", "value");
      assertThat(number(new Log().tank(35).fish("tang", TANG, 100).today(0, "08:00"), "ration", "dueKj", "value")).isEqualTo(at32);
      assertThat(at32).isEqualTo(40 * Math.pow(0.1, 0.8) * GRAZER * Math.exp(0.055 * 5), offset(1e-9));
    }
  }

  @Nested
  class What_was_given {
    @Test
    void hand_and_feeder_are_told_apart_and_leftovers_taken_off() {
      Log log = tangs().fed(3, "08:00", helping("nori_dried", 0.5));
      log.entry("feeding", 3, "12:00", Map.of("items", List.of(helping("mysis_frozen", 2)), "source", "feeder"));
      log.entry("feeding", 3, "18:00", Map.of("items", List.of(helping("nori_dried", 0.4)), "leftoverGrams", 0.1));
      log.fed(2, "08:00", helping("nori_dried", 9));
      Map<String, Object> today = log.today(3, "20:00");
      assertThat(number(today, "ration", "givenHandKj")).isEqualTo(0.8 * NORI, offset(1e-9));
      assertThat(number(today, "ration", "givenFeederKj")).isEqualTo(2 * MYSIS, offset(1e-9));
      assertThat(number(today, "ration", "givenKj", "value")).isEqualTo(0.8 * NORI + 2 * MYSIS, offset(1e-9));
      assertThat(number(today, "ration", "givenKj", "why", 0, "inputs", 0, "value")).isEqualTo(3);
      assertThat(number(today, "ration", "remainingKj", "value"))
          .isEqualTo(number(today, "ration", "dueKj", "value") - 0.8 * NORI - 2 * MYSIS, offset(1e-9));
    }

    @Test
    void what_is_handed_to_a_fish_in_isolation_is_not_given_to_the_display() {
      Log log = tangs().fish("new", TANG, 50, Map.of("place", "isolation"));
      log.entry("feeding", 0, "08:00", Map.of("items", List.of(Map.of("food", "nori_dried", "grams", 0.3, "fish", "new"),
          Map.of("food", "nori_dried", "grams", 0.2, "fish", "tang"), Map.of("food", "nori_dried", "grams", 0.1))));
      Map<String, Object> today = log.today(0, "20:00");
      assertThat(number(today, "ration", "givenKj", "value")).isEqualTo(0.3 * NORI, offset(1e-9));
      assertThat(number(today, "days", 27, "givenKj")).isEqualTo(0.3 * NORI, offset(1e-9));
      assertThat(number(one(list(today, "fish"), "id", "new"), "gotGrams")).isEqualTo(0.3);
      assertThat(number(one(list(today, "fish"), "id", "tang"), "gotGrams")).isEqualTo(0.3, offset(1e-9));
      assertThat(number(one(list(today, "fish"), "id", "tang"), "gotKj", "value")).isEqualTo(0.3 * NORI, offset(1e-9));
      assertThat(number(today, "ration", "dueKj", "value")).isEqualTo(40 * Math.pow(0.1, 0.8) * GRAZER, offset(1e-9));
    }

    @Test
    void grams_of_a_usual_food_that_would_cover_the_rest_come_with_their_range() {
      Map<String, Object> today = tangs().fed(0, "08:00", helping("nori_dried", 0.1)).today(0, "20:00");
      double due = 40 * Math.pow(0.1, 0.8) * GRAZER;
      assertThat(number(one(list(today, "ration", "foods"), "food", "mysis_frozen"), "grams", "value"))
          .isEqualTo((due - 0.1 * NORI) / MYSIS, offset(1e-9));
    }
  }

  @Test
  void the_last_three_days_of_feedings_are_shown_newest_first_and_those_taken_back_apart() {
    Log log = tangs().fed(0, "08:00", helping("nori_dried", 1)).fed(1, "08:00", helping("nori_dried", 1)).fed(3, "09:30", helping("nori_dried", 1));
    log.fed(1, "10:00", helping("krill_frozen", 1));
    log.entry("withdrawal", 1, "10:01", Map.of("entry", log.last(), "withdrawn", true));
    log.fed(0, "10:00", helping("krill_frozen", 1));
    log.entry("withdrawal", 0, "10:01", Map.of("entry", log.last(), "withdrawn", true));
    Map<String, Object> today = log.today(3, "20:00");
    assertThat(list(today, "feedings")).extracting(feeding -> feeding.get("minute")).containsExactly(570.0, 480.0);
    assertThat(list(today, "feedings")).allSatisfy(feeding -> assertThat(feeding).containsEntry("by", "teo").containsEntry("corrected", false)
        .containsEntry("sent", true).containsEntry("source", "hand"));
    assertThat(list(today, "withdrawn")).singleElement().extracting(one -> one.get("minute")).isEqualTo(600.0);
    assertThat(at(today, "lastFeeding", "minute")).isEqualTo(570.0);
    assertThat(at(today, "lastFeeding", "by")).isEqualTo("teo");
    assertThat(list(log.today(2, "20:00"), "feedings")).hasSize(2);
    assertThat(tangs().today(0, "20:00")).doesNotContainKey("lastFeeding");
  }

  @Test
  void an_entry_the_server_has_not_placed_yet_is_shown_as_unsent() {
    Log log = tangs().fed(0, "08:00", helping("nori_dried", 1));
    List<provender.engine.node.Node> nodes = log.nodes();
    nodes.set(2, new provender.engine.node.Patched(nodes.get(2), Map.of("seq", 0.0, "deviceSeq", 7.0)));
    assertThat(list(Log.today(nodes, 0, "20:00"), "feedings").get(0)).containsEntry("sent", false);
  }

  @Test
  void what_would_change_the_ration_most_comes_first() {
    List<Map<String, Object>> matters = list(tangs().today(0, "08:00"), "ration", "matters");
    assertThat(matters).extracting(one -> one.get("name")).containsExactly("coefficientHigh", "coefficientLow", "massTenthMore", "degreeMore");
    assertThat((Double) matters.get(0).get("value")).isEqualTo(70.0 / 40 - 1, offset(1e-9));
    assertThat((Double) matters.get(1).get("value")).isEqualTo(30.0 / 40 - 1, offset(1e-9));
    assertThat((Double) matters.get(2).get("value")).isEqualTo(Math.pow(1.1, 0.8) - 1, offset(1e-9));
    assertThat((Double) matters.get(3).get("value")).isEqualTo(Math.exp(0.055) - 1, offset(1e-9));
    assertThat(list(new Log().tank(27).today(0, "08:00"), "ration", "matters")).isEmpty();
  }

  @Test
  void biomass_and_due_count_every_fish_of_a_line() {
    Map<String, Object> today = tangs().fish("lions", LIONFISH, 200, Map.of("count", 3.0)).today(0, "08:00");
    double factor = requireNonNull(Log.REFERENCE.guild("piscivore")).rationFactor();
    assertThat(number(today, "biomassGrams", "value")).isEqualTo(700);
    assertThat(number(today, "ration", "dueKj", "value"))
        .isEqualTo(40 * (Math.pow(0.1, 0.8) * GRAZER + 3 * Math.pow(0.2, 0.8) * factor), offset(1e-9));
    assertThat(number(today, "ration", "dueKj", "why", 0, "value")).isEqualTo(700);
    assertThat(number(one(list(today, "fish"), "id", "lions"), "weekDueKj")).isEqualTo(7 * 40 * 3 * Math.pow(0.2, 0.8) * factor, offset(1e-6));
  }

  @Test
  void a_stewards_own_factor_counts_within_what_fish_can_live_on() {
    double usual = number(tangs().today(0, "08:00"), "ration", "dueKj", "value");
    assertThat(number(tangs().record("tank", "tank", Map.of("rationFactor", 1.2)).today(0, "08:00"), "ration", "dueKj", "value"))
        .isEqualTo(1.2 * usual, offset(1e-9));
    assertThat(number(tangs().record("tank", "tank", Map.of("rationFactor", 50.0)).today(0, "08:00"), "ration", "dueKj", "value")).isEqualTo(usual);
    assertThat(number(tangs().record("tank", "tank", Map.of("rationFactor", 0.01)).today(0, "08:00"), "ration", "dueKj", "value")).isEqualTo(usual);
  }

  @Test
  void each_day_of_the_last_four_weeks_has_what_was_due_and_given() {
    Map<String, Object> today = tangs().fed(5, "08:00", helping("nori_dried", 0.5)).today(27, "20:00");
    assertThat(list(today, "days")).hasSize(28);
    assertThat(number(today, "days", 5, "givenKj")).isEqualTo(0.5 * NORI, offset(1e-9));
    assertThat(number(today, "days", 4, "givenKj")).isZero();
    assertThat(number(today, "days", 5, "dueKj")).isEqualTo(number(today, "ration", "dueKj", "value"), offset(1e-9));
    assertThat(number(today, "days", 5, "highKj") / number(today, "days", 5, "dueKj")).isEqualTo(1.75, offset(1e-9));
    assertThat(number(today, "days", 27, "day")).isEqualTo(number(today, "day"));
  }

  @Test
  void a_fish_knows_when_it_was_offered_and_took_each_part_of_its_diet() {
    Log log = tangs().fed(2, "08:00", helping("nori_dried", 0.5)).fed(4, "08:00", helping("mysis_frozen", 1));
    log.entry("feeding", 6, "08:00", Map.of("items", List.of(helping("nori_dried", 0.5)), "refusedBy", List.of("tang")));
    Map<String, Object> tang = list(log.today(9, "20:00"), "fish").get(0);
    Map<String, Object> algae = one(list(tang, "components"), "component", "algae");
    assertThat(algae).containsEntry("daysSinceOffered", 3.0).containsEntry("daysSinceTaken", 7.0).containsEntry("gapDays", 1.0)
        .containsEntry("min", 0.6).containsEntry("target", 0.8).containsEntry("max", 0.95);
    double nori = 0.5 * 0.961;
    double mysis = 1 * 0.14;
    assertThat((Double) algae.get("share")).isEqualTo(nori / (nori + mysis), offset(1e-9));
    assertThat(number(tang, "lastTookDay")).isEqualTo(number(log.today(4, "20:00"), "day"));
    assertThat(number(tang, "weekGotKj")).isEqualTo(0.5 * NORI + MYSIS, offset(1e-9));
    assertThat(number(list(log.today(10, "20:00"), "fish").get(0), "weekGotKj")).isEqualTo(MYSIS, offset(1e-9));
  }

  @Test
  void food_from_before_a_fish_came_was_not_offered_to_it() {
    Map<String, Object> today = tangs().fish("late", TANG, 60, Map.of("arrivedOn", "2026-06-06")).fed(2, "08:00", helping("nori_dried", 0.5)).today(9, "20:00");
    assertThat(one(list(one(list(today, "fish"), "id", "late"), "components"), "component", "algae")).doesNotContainKeys("daysSinceOffered", "share");
    assertThat(one(list(one(list(today, "fish"), "id", "tang"), "components"), "component", "algae")).containsEntry("daysSinceOffered", 7.0);
  }
}
