package provender.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RefusalTest {
  private static final String FOODS = "foods.csv";
  private static final String COMPONENTS = "guild_components.csv";

  @TempDir Path folder;
  private BrokenCopy copy;

  @BeforeEach void our_own_tables_in_a_folder() throws IOException {
    copy = BrokenCopy.in(folder);
  }

  @Test void a_faithful_copy_is_accepted() {
    assertThat(ReferenceFiles.in(folder).read()).isEqualTo(ReferenceFiles.in(BrokenCopy.OURS).read());
  }

  @Test void the_message_names_file_line_and_column() throws IOException {
    copy.set(FOODS, "laver_fresh", "protein_g", "lots");
    assertThatThrownBy(() -> ReferenceFiles.in(folder).read())
        .hasMessageContaining("foods.csv, line " + copy.lineOf(FOODS, "laver_fresh") + ", column protein_g")
        .hasMessageContaining("'lots'");
  }

  @Test void all_faults_are_named_at_once() throws IOException {
    copy.set("constants.csv", "stale_days", "value", "soon")
        .set("families.csv", "Acanthuridae", "lwr_source", "nobody1900")
        .remove("supplements.csv");
    assertThat(copy.faults()).extracting(Fault::file)
        .containsExactlyInAnyOrder("constants.csv", "families.csv", "supplements.csv");
  }

  @Nested class A_number {
    @Test void without_a_source_is_refused() throws IOException {
      copy.set("constants.csv", "stale_days", "source", "");
      refusedAt("constants.csv", "stale_days", "value", "has no source");
    }

    @Test void without_a_standing_is_refused() throws IOException {
      copy.set("constants.csv", "stale_days", "status", "");
      refusedAt("constants.csv", "stale_days", "value", "has no standing");
    }

    @Test void answers_to_its_own_columns_not_to_the_row_in_general() throws IOException {
      copy.set("families.csv", "Acanthuridae", "metab_source", "");
      refusedAt("families.csv", "Acanthuridae", "active_metab_ratio_100g", "metab_source is empty");
    }

    @Test void that_is_not_a_number_is_refused() throws IOException {
      for (var text : new String[] {"NaN", "-1", "1d", "1.5.2", "0x10", "about 3"}) {
        copy.set("constants.csv", "stale_days", "value", text);
        refusedAt("constants.csv", "stale_days", "value", "'" + text + "'");
      }
    }

    @Test void that_must_be_there_is_missed() throws IOException {
      copy.set(FOODS, "laver_fresh", "fat_g", "");
      refusedAt(FOODS, "laver_fresh", "fat_g", "is empty");
    }
  }

  @Nested class A_key {
    @Test void of_an_unknown_source_is_refused() throws IOException {
      copy.set("constants.csv", "stale_days", "source", "practice|nobody1900");
      refusedAt("constants.csv", "stale_days", "source", "'nobody1900' is not in the table sources");
    }

    @Test void of_an_unknown_guild_is_refused() throws IOException {
      copy.change("species.csv", "Zebrasoma scopas", "macroalgae_browser", "lawn_mower");
      refusedAt("species.csv", "Zebrasoma scopas", "guild", "'lawn_mower' is not in the table guilds");
    }

    @Test void of_an_unknown_family_is_refused() throws IOException {
      copy.set("species.csv", "Zebrasoma scopas", "family", "Nobodyidae");
      refusedAt("species.csv", "Zebrasoma scopas", "family", "'Nobodyidae' is not in the table families");
    }

    @Test void of_an_unknown_food_is_refused() throws IOException {
      copy.change("deficiency.csv", "no-sponge", "gel_food_algae", "moon_cheese");
      refusedAt("deficiency.csv", "no-sponge", "offer_foods", "'moon_cheese' is not in the table foods");
    }

    @Test void that_stands_twice_is_refused_where_it_stands_again() throws IOException {
      var first = copy.lineOf("families.csv", "Acanthuridae");
      copy.append("families.csv", copy.lines("families.csv").get(first - 1));
      assertThat(copy.faults()).singleElement().satisfies(fault -> {
        assertThat(fault.line()).isGreaterThan(first);
        assertThat(fault.column()).isEqualTo("family");
        assertThat(fault.says()).contains("'Acanthuridae'").contains("line " + first);
      });
    }

    @Test void made_of_two_columns_may_share_one_of_them() throws IOException {
      copy.append(COMPONENTS, "sponge_angel,algae,flag,,,,7,once more,practice,practice");
      assertThat(copy.faults()).extracting(Fault::says).contains("'sponge_angel + algae' stands already in line "
          + copy.lineOf(COMPONENTS, "sponge_angel,algae"));
    }
  }

  @Nested class A_word {
    @Test void for_an_unknown_standing_is_refused() throws IOException {
      copy.set("constants.csv", "stale_days", "status", "hearsay");
      refusedAt("constants.csv", "stale_days", "status", "memory, practice, seen, not 'hearsay'");
    }

    @Test void for_an_unknown_component_is_refused() throws IOException {
      copy.set(COMPONENTS, "cleaner,fish", "component", "toast");
      assertThat(copy.faults()).anySatisfy(fault -> {
        assertThat(fault.column()).isEqualTo("component");
        assertThat(fault.says()).contains("'toast'");
      });
    }

    @Test void for_an_unknown_component_of_a_food_is_refused() throws IOException {
      copy.set(FOODS, "laver_fresh", "component_shares", "algae:0.7|toast:0.3");
      assertThat(copy.faults()).anySatisfy(fault -> {
        assertThat(fault.line()).isEqualTo(copy.lineOf(FOODS, "laver_fresh"));
        assertThat(fault.column()).isEqualTo("component_shares");
        assertThat(fault.says()).contains("'toast'");
      });
    }
  }

  @Nested class A_sum {
    @Test void of_component_shares_must_be_one() throws IOException {
      copy.set(FOODS, "laver_fresh", "component_shares", "algae:0.7|plankton:0.2");
      refusedAt(FOODS, "laver_fresh", "component_shares", "must add up to 1");
    }

    @Test void of_proximates_must_be_about_a_hundred() throws IOException {
      copy.set(FOODS, "laver_fresh", "water_g_per_100g", "70");
      refusedAt(FOODS, "laver_fresh", "water_g_per_100g", "97 to 103");
    }

    @Test void of_a_guilds_targets_must_fill_its_diet() throws IOException {
      copy.set(COMPONENTS, "turf_grazer,algae", "target_share", "0.6");
      refusedAt(COMPONENTS, "turf_grazer,algae", "target_share", "0.9 to 1");
    }

    @Test void of_a_guilds_minima_must_leave_room() throws IOException {
      copy.set(COMPONENTS, "turf_grazer,algae", "min_share", "0.8")
          .set(COMPONENTS, "turf_grazer,plankton", "min_share", "0.3");
      assertThat(copy.faults()).extracting(Fault::says).anySatisfy(says -> assertThat(says).contains("at most 1"));
    }

    @Test void of_gut_parts_must_be_a_hundred() throws IOException {
      copy.change("species.csv", "Acanthurus coeruleus", ",53.2,", ",33.2,");
      refusedAt("species.csv", "Acanthurus coeruleus", "sponge_pct", "must add up to 100");
    }
  }

  @Nested class A_range {
    @Test void that_does_not_hold_its_own_value_is_refused() throws IOException {
      copy.set("constants.csv", "maintenance_kj", "low", "45");
      refusedAt("constants.csv", "maintenance_kj", "low", "is above the value");
    }

    @Test void of_a_share_must_rise() throws IOException {
      copy.set(COMPONENTS, "turf_grazer,algae", "min_share", "0.9");
      refusedAt(COMPONENTS, "turf_grazer,algae", "target_share", "min_share <= target_share");
    }

    @Test void of_a_share_must_be_whole() throws IOException {
      copy.set(COMPONENTS, "turf_grazer,algae", "max_share", "");
      refusedAt(COMPONENTS, "turf_grazer,algae", "target_share", "a share needs");
    }

    @Test void of_a_measured_fit_needs_its_scatter() throws IOException {
      copy.change("species.csv", "Acanthurus achilles", ",0.128,", ",,");
      refusedAt("species.csv", "Acanthurus achilles", "measured_fit_a", "measured_scatter_sd_log");
    }
  }

  @Nested class A_file {
    @Test void that_is_missing_is_named() throws IOException {
      copy.remove("sources.csv");
      assertThat(copy.faults()).extracting(Fault::toString).containsExactly("sources.csv: is missing");
    }

    @Test void without_rows_is_refused() throws IOException {
      Files.write(folder.resolve("supplements.csv"), copy.lines("supplements.csv").subList(0, 1));
      assertThat(copy.faults()).extracting(Fault::toString).containsExactly("supplements.csv: holds no rows");
    }

    @Test void without_a_column_is_refused() throws IOException {
      copy.change("families.csv", "family,", "lwr_status", "lwr_rumour");
      assertThat(copy.faults()).extracting(Fault::toString).containsExactlyInAnyOrder(
          "families.csv, line 1, column lwr_status: is missing from the header",
          "families.csv, line 1, column lwr_rumour: is not a column of this table");
    }

    @Test void with_a_line_of_too_few_cells_is_refused() throws IOException {
      copy.append("families.csv", "Gobiesocidae,0.01");
      assertThat(copy.faults()).singleElement().satisfies(fault -> {
        assertThat(fault.line()).isEqualTo(copy.lineOf("families.csv", "Gobiesocidae"));
        assertThat(fault.says()).contains("has 2 cells");
      });
    }

    @Test void with_a_cell_over_two_lines_still_counts_its_lines_right() throws IOException {
      copy.change("constants.csv", "fallback_temperature_c", line -> line + "\"over\ntwo lines\"")
          .append("constants.csv", "nonsense,many,,,1,a constant that is no number,practice,practice,");
      refusedAt("constants.csv", "nonsense", "value", "'many'");
    }

    @Test void in_another_encoding_is_refused() throws IOException {
      var latin = String.join("\n", copy.lines("sources.csv")).getBytes(StandardCharsets.ISO_8859_1);
      Files.write(folder.resolve("sources.csv"), latin);
      assertThat(copy.faults()).singleElement()
          .satisfies(fault -> assertThat(fault.toString()).startsWith("sources.csv: cannot be read"));
    }
  }

  private void refusedAt(String file, String beginning, String column, String says) throws IOException {
    int line = copy.lineOf(file, beginning);
    assertThat(copy.faults()).singleElement().satisfies(fault -> {
      assertThat(fault.file()).isEqualTo(file);
      assertThat(fault.line()).isEqualTo(line);
      assertThat(fault.column()).isEqualTo(column);
      assertThat(fault.says()).contains(says);
    });
  }
}
