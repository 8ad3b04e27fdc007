package provender.engine.diet;

import static org.assertj.core.api.Assertions.assertThat;
import static provender.engine.Log.helping;

import java.util.Map;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import provender.engine.Log;

/** Each rule with a case in which it speaks and its quiet twin; limits and gaps are those of the tables. */
class DietRulesTest {
  private static final String TANG = "Zebrasoma flavescens";
  private static final String ANGEL = "Pomacanthus imperator";
  private static final String PUFFER = "Diodon holocanthus";
  private static final String LIONFISH = "Pterois volitans";
  private static final String ANTHIAS = "Pseudanthias squamipinnis";
  private static final String CORAL_EATER = "Chaetodon trifascialis";
  private static final double GRAMS = 100;
  /** Twelve grams of wet food are about a day's ration of 100 g of fish at 26 °C. */
  private static final double ABOUT_A_RATION = 1.8;

  private static Log tank(String species) {
    return new Log().tank(26, "mysis_frozen").fish("it", species, GRAMS);
  }

  @Nested
  class Algae {
    @Test
    void a_grazer_without_algae_since_the_day_before_yesterday_is_found() {
      assertThat(tank(TANG).fedDaily(0, 9, "08:00", helping("nori_dried", 0.6)).fedDaily(10, 12, "08:00", helping("mysis_frozen", ABOUT_A_RATION))
          .rules(12)).contains("no-algae");
    }

    @Test
    void one_that_had_algae_yesterday_is_not() {
      assertThat(tank(TANG).fedDaily(0, 11, "08:00", helping("nori_dried", 0.6)).fed(12, "08:00", helping("mysis_frozen", ABOUT_A_RATION))
          .rules(12)).doesNotContain("no-algae");
    }

    @Test
    void a_grazer_that_fills_up_on_meat_is_found_though_it_gets_algae_every_day() {
      Log log = tank(TANG).fedDaily(0, 12, "08:00", helping("mysis_frozen", 2.4), helping("nori_dried", 0.05));
      assertThat(log.rules(12)).contains("too-much-meat-grazer").doesNotContain("no-algae");
    }

    @Test
    void one_that_lives_on_algae_is_not() {
      assertThat(tank(TANG).fedDaily(0, 12, "08:00", helping("nori_dried", 0.6)).rules(12)).doesNotContain("too-much-meat-grazer");
    }

    @Test
    void kelp_beyond_a_twentieth_is_found_and_nori_is_not() {
      assertThat(tank(TANG).fedDaily(0, 12, "08:00", helping("nori_dried", 0.5), helping("kelp_dried", 0.1)).rules(12)).contains("too-much-kelp");
      assertThat(tank(TANG).fedDaily(0, 12, "08:00", helping("nori_dried", 0.6)).rules(12)).doesNotContain("too-much-kelp");
    }

    @Test
    void lettuce_in_the_place_of_algae_is_found_and_beside_it_is_not() {
      assertThat(tank(TANG).fedDaily(0, 20, "08:00", helping("romaine_lettuce", 8), helping("nori_dried", 0.2)).rules(20)).contains("greens-only");
      assertThat(tank(TANG).fedDaily(0, 20, "08:00", helping("romaine_lettuce", 1), helping("nori_dried", 0.6)).rules(20)).doesNotContain("greens-only");
    }

    @Test
    void spinach_day_after_day_is_found_and_now_and_then_is_not() {
      assertThat(tank(TANG).fedDaily(0, 12, "08:00", helping("spinach", 3), helping("nori_dried", 0.5)).rules(12)).contains("oxalate-greens");
      assertThat(tank(TANG).fedDaily(0, 12, "08:00", helping("nori_dried", 0.6)).fed(9, "18:00", helping("spinach", 0.5)).rules(12))
          .doesNotContain("oxalate-greens");
    }
  }

  @Nested
  class Sponge_and_shell {
    @Test
    void an_angel_may_go_three_days_without_sponge_and_not_four() {
      Log log = tank(ANGEL).fedDaily(0, 8, "08:00", helping("sponge_prepared_frozen", 2)).fedDaily(9, 12, "08:00", helping("mysis_frozen", ABOUT_A_RATION));
      assertThat(log.rules(11)).doesNotContain("no-sponge");
      assertThat(log.rules(12)).contains("no-sponge");
    }

    @Test
    void a_crusher_without_anything_hard_is_found_and_with_a_clam_is_not() {
      Log soft = tank(PUFFER).fedDaily(0, 12, "08:00", helping("mysis_frozen", ABOUT_A_RATION));
      assertThat(soft.rules(12)).contains("no-hard-food");
      assertThat(soft.fed(11, "18:00", helping("clam_half_shell", 4)).rules(12)).doesNotContain("no-hard-food");
    }
  }

  @Nested
  class Nutrients {
    @Test
    void thiaminase_without_thiamine_is_found_and_with_it_is_not() {
      assertThat(tank(LIONFISH).fedDaily(0, 20, "08:00", helping("smelt_whole", ABOUT_A_RATION)).rules(20)).contains("thiaminase-load");
      assertThat(tank(LIONFISH).fedDaily(0, 20, "08:00", helping("smelt_whole", ABOUT_A_RATION, "thiamine")).rules(20)).doesNotContain("thiaminase-load");
    }

    @Test
    void oily_fish_without_vitamin_e_is_found_and_with_it_is_not() {
      assertThat(tank(LIONFISH).fedDaily(0, 20, "08:00", helping("mackerel", 1)).rules(20)).contains("oily-no-e");
      assertThat(tank(LIONFISH).fedDaily(0, 20, "08:00", helping("mackerel", 1, "vitamin_e")).rules(20)).doesNotContain("oily-no-e");
    }

    @Test
    void a_week_without_marine_fatty_acids_is_found_and_a_soak_ends_it() {
      assertThat(tank(ANTHIAS).fedDaily(0, 12, "08:00", helping("brine_shrimp_adult_frozen", 4)).rules(12)).contains("low-hufa", "only-plain-brine");
      assertThat(tank(ANTHIAS).fedDaily(0, 12, "08:00", helping("brine_shrimp_adult_frozen", 4, "hufa_vitamin_soak")).rules(12))
          .doesNotContain("low-hufa", "only-plain-brine");
    }

    @Test
    void a_fortnight_without_vitamin_c_is_found_and_a_pellet_ends_it() {
      Log log = tank(LIONFISH).fedDaily(0, 20, "08:00", helping("shrimp_peeled", ABOUT_A_RATION));
      assertThat(log.rules(20)).contains("low-vitamin-c");
      assertThat(log.fed(18, "18:00", helping("pellet_carnivore", 0.1)).rules(20)).doesNotContain("low-vitamin-c");
    }

    @Test
    void a_week_without_iodine_is_found_and_nori_ends_it() {
      Log log = tank(LIONFISH).fedDaily(0, 12, "08:00", helping("shrimp_peeled", ABOUT_A_RATION));
      assertThat(log.rules(12)).contains("low-iodine");
      assertThat(log.fed(10, "18:00", helping("mussel_meat", 0.5)).rules(12)).doesNotContain("low-iodine");
    }

    @Test
    void a_month_without_carotenoids_is_found_and_krill_ends_it() {
      Log log = tank(ANTHIAS).fedDaily(0, 40, "08:00", helping("white_fish", ABOUT_A_RATION));
      assertThat(log.rules(40)).contains("no-carotenoid");
      assertThat(log.fed(35, "18:00", helping("krill_frozen", 0.5)).rules(40)).doesNotContain("no-carotenoid");
    }
  }

  @Nested
  class Variety_and_eating {
    @Test
    void fillet_without_bones_is_found_and_whole_fish_is_not() {
      assertThat(tank(LIONFISH).fedDaily(0, 20, "08:00", helping("white_fish", ABOUT_A_RATION)).rules(20)).contains("fillet-only");
      assertThat(tank(LIONFISH).fedDaily(0, 20, "08:00", helping("sand_lance_whole", ABOUT_A_RATION)).rules(20)).doesNotContain("fillet-only");
    }

    @Test
    void one_food_for_a_month_is_found_and_a_second_beside_it_is_not() {
      assertThat(tank(LIONFISH).fedDaily(0, 35, "08:00", helping("shrimp_peeled", ABOUT_A_RATION)).rules(35)).contains("one-food");
      assertThat(tank(LIONFISH).fedDaily(0, 35, "08:00", helping("shrimp_peeled", 0.9), helping("sand_lance_whole", 0.9)).rules(35))
          .doesNotContain("one-food");
      assertThat(tank(ANTHIAS).fedDaily(0, 35, "08:00", helping("pellet_small_soft", 0.4)).rules(35)).doesNotContain("one-food");
    }

    @Test
    void plankton_pickers_fed_twice_a_day_are_found_and_four_times_a_day_are_not() {
      Log log = tank(ANTHIAS).fedDaily(0, 12, "08:00", helping("mysis_frozen", 0.5)).fedDaily(0, 12, "18:00", helping("mysis_frozen", 0.5));
      assertThat(log.rules(12)).contains("too-few-meals");
      assertThat(log.fedDaily(0, 12, "11:00", helping("mysis_frozen", 0.5)).fedDaily(0, 12, "14:00", helping("mysis_frozen", 0.5)).rules(12))
          .doesNotContain("too-few-meals");
    }

    @Test
    void a_fish_that_refuses_for_longer_than_its_size_allows_is_found_and_a_day_earlier_is_not() {
      Log log = tank(LIONFISH).fish("other", LIONFISH, GRAMS).fedDaily(0, 9, "08:00", helping("mysis_frozen", 3.6));
      for (int day = 10; day <= 17; day++) {
        log.entry("feeding", day, "08:00", Map.of("items", java.util.List.of(helping("mysis_frozen", 3.6)), "refusedBy", java.util.List.of("it")));
      }
      // Lupatsch et al. 1998, 42.5 kJ kg^-0.83 a day at 8 kJ per gram lost: 100 g lose a twentieth in 6.50 days.
      assertThat(log.rules(15)).doesNotContain("not-eating");
      assertThat(log.findings(16)).filteredOn(finding -> finding.get("rule").equals("not-eating")).singleElement()
          .satisfies(finding -> assertThat((Double) ((Map<?, ?>) finding.get("facts")).get("limitDays")).isBetween(6.495, 6.505));
    }

    @Test
    void a_fish_that_people_saw_turn_from_its_food_on_three_of_seven_days_is_named_until_they_see_it_eat() {
      Log log = tank(LIONFISH).fish("other", LIONFISH, GRAMS).fedDaily(0, 17, "08:00", helping("mysis_frozen", 3.6));
      for (int day : new int[] {10, 11, 13}) {
        log.saw(day, "it", "refused", Map.of());
      }
      assertThat(log.rules(12)).doesNotContain("refusing");
      assertThat(log.findings(15)).filteredOn(finding -> finding.get("rule").equals("refusing")).singleElement()
          .satisfies(finding -> assertThat(finding.get("fish")).isEqualTo(java.util.List.of("it")))
          .satisfies(finding -> assertThat(finding.get("days")).isEqualTo(3.0));
      assertThat(log.rules(17)).doesNotContain("refusing");
      assertThat(log.saw(14, "it", "ate", Map.of()).rules(15)).doesNotContain("refusing");
    }

    @Test
    void what_a_fish_would_not_touch_on_a_day_is_reckoned_to_the_others_and_other_days_stay_as_they_were() {
      Log log = tank(LIONFISH).fish("other", LIONFISH, GRAMS).fedDaily(0, 10, "08:00", helping("mysis_frozen", 3.6));
      double usual = gotToday(log, 9, "it");
      log.saw(10, "it", "refused", Map.of());
      assertThat(gotToday(log, 10, "it")).isZero();
      assertThat(gotToday(log, 10, "other")).isGreaterThan(usual);
      assertThat(gotToday(log, 9, "it")).isEqualTo(usual);
    }

    private static double gotToday(Log log, int day, String fish) {
      return ((java.util.List<?>) log.today(day, "21:00").get("fish")).stream().map(Map.class::cast).filter(one -> one.get("id").equals(fish))
          .mapToDouble(one -> ((Number) one.get("gotGrams")).doubleValue()).sum();
    }

    @Test
    void an_obligate_coral_eater_is_found_the_day_it_comes_and_no_other_fish_is() {
      assertThat(tank(CORAL_EATER).fed(0, "08:00", helping("mysis_frozen", 1)).rules(0)).containsExactly("obligate-coral");
      assertThat(tank(TANG).fed(0, "08:00", helping("mysis_frozen", 1)).rules(0)).isEmpty();
    }
  }

  @Nested
  class Energy_and_water {
    @Test
    void half_the_ration_for_a_week_is_found_and_the_whole_ration_is_not() {
      assertThat(tank(LIONFISH).fedDaily(0, 12, "08:00", helping("sand_lance_whole", 0.2)).rules(12)).contains("too-little-food");
      assertThat(tank(LIONFISH).fedDaily(0, 12, "08:00", helping("sand_lance_whole", 0.5)).rules(12)).doesNotContain("too-little-food", "too-much-food");
    }

    @Test
    void twice_the_ration_for_a_week_is_found() {
      assertThat(tank(LIONFISH).fedDaily(0, 12, "08:00", helping("sand_lance_whole", 3)).rules(12)).contains("too-much-food");
    }

    @Test
    void water_above_the_alarm_is_found_and_at_it_is_not() {
      assertThat(new Log().tank(32.1).fish("it", TANG, GRAMS).fed(0, "08:00", helping("nori_dried", 0.6)).rules(0)).contains("hot-water");
      assertThat(new Log().tank(32).fish("it", TANG, GRAMS).fed(0, "08:00", helping("nori_dried", 0.6)).rules(0)).doesNotContain("hot-water");
    }

    @Test
    void a_tank_nobody_logged_for_yet_has_nothing_wrong() {
      assertThat(tank(CORAL_EATER).rules(0)).isEmpty();
    }
  }
}
