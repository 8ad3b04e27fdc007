package provender.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the README beside the tables says of them. */
class OurTablesTest {
  private static final Map<String, List<Map<String, Object>>> TABLES = ReferenceFiles.onClasspath().read();

  @Test void every_table_is_accepted_under_its_name() {
    var sizes = new LinkedHashMap<String, Integer>();
    TABLES.forEach((name, rows) -> sizes.put(name, rows.size()));
    assertThat(sizes).containsExactly(Map.entry("foods", 55), Map.entry("guilds", 16),
        Map.entry("guildComponents", 113), Map.entry("species", 144), Map.entry("families", 32),
        Map.entry("supplements", 12), Map.entry("deficiencies", 35), Map.entry("sources", 99),
        Map.entry("constants", TABLES.get("constants").size()), Map.entry("rationModels", 5));
  }

  @Test void numbers_are_numbers_text_is_text_and_empty_cells_are_left_out() {
    var tang = row("species", "scientific_name", "Zebrasoma scopas");
    assertThat(tang).containsEntry("lwr_b", 2.98).containsEntry("length_type", "TL").doesNotContainKey("measured_fit_a");
    assertThat(TABLES.values().stream().flatMap(List::stream).flatMap(row -> row.values().stream()))
        .allMatch(value -> value instanceof Double || value instanceof String text && !text.isEmpty());
  }

  @Test void the_nutrients_of_every_food_add_up_to_about_a_hundred() {
    assertThat(TABLES.get("foods")).allSatisfy(food -> assertThat(number(food, "water_g_per_100g")
        + number(food, "protein_g") + number(food, "fat_g") + number(food, "carb_g") + number(food, "ash_g"))
        .isCloseTo(100, offset(3.0)));
  }

  @Test void the_targets_of_every_guild_fill_its_diet_and_its_minima_leave_room() {
    assertThat(TABLES.get("guilds")).allSatisfy(guild -> {
      assertThat(sharesOf(guild).mapToDouble(row -> number(row, "target_share")).sum()).isBetween(0.9, 1 + 1e-9);
      assertThat(sharesOf(guild).mapToDouble(row -> number(row, "min_share")).sum()).isLessThanOrEqualTo(1 + 1e-9);
    });
  }

  @Test void obligate_coral_eaters_are_not_to_be_kept() {
    assertThat(Stream.of("Chaetodon trifascialis", "Chaetodon lunulatus", "Chaetodon ornatissimus",
        "Oxymonacanthus longirostris").map(name -> guildOf(name).get("warning_level")))
        .containsOnly("do_not_keep");
  }

  @Test void kelp_holds_about_a_hundred_times_the_iodine_of_nori() {
    double kelp = number(row("foods", "key", "kelp_dried"), "iodine_ug");
    double nori = number(row("foods", "key", "nori_dried"), "iodine_ug");
    assertThat(kelp / nori).isBetween(80.0, 120.0);
  }

  @Test void a_gram_of_pellet_carries_several_times_the_dry_matter_of_thawed_shrimp() {
    double pellet = 100 - number(row("foods", "key", "pellet_carnivore"), "water_g_per_100g");
    double shrimp = 100 - number(row("foods", "key", "shrimp_peeled"), "water_g_per_100g");
    assertThat(pellet / shrimp).isGreaterThan(4);
  }

  @Test void a_measured_fit_names_the_real_fish_it_was_made_from() {
    assertThat(TABLES.get("species").stream().filter(row -> row.containsKey("measured_fit_a"))).hasSize(4)
        .allSatisfy(row -> {
          assertThat(row.get("measured_source").toString()).contains("morat2020");
          assertThat(row).containsKeys("measured_fit_b", "measured_scatter_sd_log", "measured_n",
              "measured_len_min_cm", "measured_len_max_cm");
        });
  }

  @Test void a_measured_fit_agrees_with_the_measured_factor_in_the_middle_of_its_lengths() {
    assertThat(TABLES.get("species").stream().filter(row -> row.containsKey("measured_fit_a"))).allSatisfy(row -> {
      double middle = (number(row, "measured_len_min_cm") + number(row, "measured_len_max_cm")) / 2;
      double fitted = grams(row, "measured_fit_a", "measured_fit_b", middle);
      double fromTable = grams(row, "lwr_a", "lwr_b", middle) * number(row, "measured_weight_factor");
      assertThat(fitted / fromTable).isCloseTo(1, offset(0.15));
    });
  }

  @Test void the_table_weight_of_a_long_tailed_triggerfish_is_far_too_high_and_the_measured_factor_says_so() {
    var triggerfish = row("species", "scientific_name", "Odonus niger");
    assertThat(number(triggerfish, "measured_weight_factor"))
        .isLessThan(1 - number(row("constants", "key", "table_weight_band"), "value"));
  }

  @Test void every_length_weight_row_carries_the_licence_of_its_source() {
    assertThat(Stream.concat(TABLES.get("species").stream(), TABLES.get("families").stream())
        .filter(row -> row.get("lwr_source").toString().contains("fishbase")))
        .hasSizeGreaterThan(100)
        .allSatisfy(row -> assertThat(row.get("licence").toString()).startsWith("CC BY-NC"));
  }

  @Test void a_family_value_gives_the_median_weight_it_was_set_to_at_fifteen_centimetres() {
    assertThat(TABLES.get("families")).allSatisfy(family -> assertThat(grams(family, "lwr_a", "lwr_b", 15)
        / number(family, "weight_g_at_15cm_median")).isCloseTo(1, offset(0.03)));
  }

  @Test void a_finding_on_missing_food_offers_something_that_holds_it() {
    assertThat(offered("no-algae")).allSatisfy(food ->
        assertThat(food.get("component_shares").toString()).contains("algae"));
    assertThat(offered("no-hard-food")).allSatisfy(food -> assertThat(food.get("flags").toString()).contains("hard_shelled"));
    assertThat(offered("low-hufa")).allSatisfy(food -> assertThat(food.get("flags").toString()).contains("n3_hufa"));
    assertThat(offered("no-carotenoid")).allSatisfy(food ->
        assertThat(food.get("flags").toString()).contains("carotenoid"));
  }

  @Test void a_number_recalled_or_chosen_never_passes_for_one_that_was_read() {
    assertThat(TABLES.get("constants")).allSatisfy(constant -> {
      if (constant.get("source").equals("practice")) assertThat(constant).containsEntry("status", "practice");
      if (constant.get("status").equals("seen")) assertThat(constant.get("source")).isNotEqualTo("nrc2011");
    });
  }

  private static Stream<Map<String, Object>> offered(String deficiency) {
    return Stream.of(row("deficiencies", "key", deficiency).get("offer_foods").toString().split("\\|"))
        .map(food -> row("foods", "key", food));
  }

  private static Stream<Map<String, Object>> sharesOf(Map<String, Object> guild) {
    return TABLES.get("guildComponents").stream()
        .filter(row -> row.get("guild").equals(guild.get("guild")) && row.get("kind").equals("share"));
  }

  private static Map<String, Object> guildOf(String species) {
    return row("guilds", "guild", row("species", "scientific_name", species).get("guild").toString());
  }

  private static double grams(Map<String, Object> row, String a, String b, double lengthCm) {
    return number(row, a) * Math.pow(lengthCm, number(row, b));
  }

  private static double number(Map<String, Object> row, String column) {
    return (Double) row.get(column);
  }

  private static Map<String, Object> row(String table, String column, String key) {
    return TABLES.get(table).stream().filter(row -> key.equals(row.get(column))).findFirst().orElseThrow();
  }
}
