package provender.reference;

import java.util.List;

/** Every table the product reads: its columns, and what each number answers to. */
final class Tables {
  static final String SOURCES_NAME = "sources";

  static final String[] COMPONENTS = {"sponge", "algae", "detritus", "tunicate", "cnidarian", "crustacean", "mollusc",
      "worm", "fish", "plankton", "echinoderm", "other"};
  static final String[] FLAGS = {"hard_shelled", "carotenoid", "n3_hufa", "whole_prey", "complete", "iodine_high",
      "oxalate_high", "unenriched"};
  static final String[] GUT_PARTS = {"sponge_pct", "algae_pct", "detritus_pct", "tunicate_pct", "cnidarian_pct",
      "crustacean_pct", "mollusc_pct", "worm_pct", "fish_pct", "plankton_pct", "echinoderm_pct", "other_pct",
      "unrecorded_pct"};
  static final String[] PROXIMATES = {"water_g_per_100g", "protein_g", "fat_g", "carb_g", "ash_g"};

  static final Table FOODS = Table.of("foods", "foods.csv", "key")
      .text("key", "name").note("note")
      .word("category", "macroalgae", "greens", "crustacean", "zooplankton", "mollusc", "fish", "prepared",
          "sponge-bearing", "dry")
      .keys("source", SOURCES_NAME).standing("status").text("source_id")
      .answeringTo("source", "status").number(PROXIMATES)
      .numberOrNone("fibre_g", "epa_mg", "dha_mg", "vitA_ug_rae", "vitE_mg", "vitC_mg", "thiamin_mg")
      .answeringTo("source", "phosphorus_status").number("phosphorus_mg")
      .answeringTo("iodine_source", "iodine_status").numberOrNone("iodine_ug")
      .word("thiaminase", "yes", "no", "unknown", "depends on recipe")
      .keysOrNone("thiaminase_source", SOURCES_NAME).wordOrNone("thiaminase_status", "seen", "memory", "practice")
      .text("hard_part").answeringTo("edible_source", "edible_status").number("edible_fraction")
      .answeringTo("shares_source", "shares_status").shares("component_shares", COMPONENTS)
      .wordOrNone("flags", FLAGS)
      .text("household_measure").answeringTo("measure_source", "measure_status").number("measure_g");

  static final Table GUILDS = Table.of("guilds", "guilds.csv", "guild")
      .text("guild", "label", "natural_basis").keys("natural_source", SOURCES_NAME)
      .keys("source", SOURCES_NAME).standing("status")
      .answeringTo("meals_source", "meals_status")
      .number("meals_per_day_min", "meals_per_day_target", "meals_per_day_max", "feeding_days_per_week")
      .text("ration_reason").answeringTo("ration_source", "ration_status").number("ration_factor")
      .answeringTo("n3_hufa_source", "n3_hufa_status").number("n3_hufa_pct_dm_min", "n3_hufa_pct_dm_target")
      .answeringTo("vitC_source", "vitC_status").number("vitC_mg_per_kg_dm")
      .answeringTo("vitE_source", "vitE_status").number("vitE_mg_per_kg_dm")
      .answeringTo("thiamine_source", "thiamine_status").number("thiamine_mg_per_kg_dm")
      .answeringTo("protein_fat_source", "protein_fat_status").number("protein_pct_dm_min", "fat_pct_dm_max")
      .text("published_trophic_guild").answeringTo("natural_np_source", "natural_np_status")
      .number("natural_diet_n_pct_dm", "natural_diet_p_pct_dm")
      .note("warning").word("warning_level", "info", "caution", "do_not_keep");

  static final Table GUILD_COMPONENTS = Table.of("guildComponents", "guild_components.csv", "guild", "component")
      .keys("guild", "guilds").text("component", "reason").word("kind", "share", "flag")
      .answeringTo("source", "status").number("max_days_between")
      .numberOrNone("min_share", "target_share", "max_share");

  static final Table SPECIES = Table.of("species", "species.csv", "scientific_name")
      .text("scientific_name", "common_name").note("note", "licence")
      .keys("family", "families").keys("guild", "guilds").standing("guild_status")
      .keys("source", SOURCES_NAME).standing("status")
      .answeringTo("max_length_source", "max_length_status").number("max_length_cm")
      .answeringTo("lwr_source", "lwr_status").number("lwr_a", "lwr_b").word("length_type", "TL", "FL", "SL", "height")
      .answeringTo("measured_source", "measured_status")
      .numberOrNone("measured_weight_factor", "measured_factor_low", "measured_factor_high", "measured_fit_a",
          "measured_fit_b", "measured_scatter_sd_log", "measured_n", "measured_len_min_cm", "measured_len_max_cm")
      .note("published_trophic_guild").wordOrNone("published_guild_basis", "gut data", "model")
      .answeringTo("diet_source", "diet_status").numberOrNone(GUT_PARTS).numberOrNone("diet_n_guts")
      .wordOrNone("diet_method", "VOL", "OCC")
      .word("wear_need", "none", "low", "medium", "high").text("wear_reason").standing("wear_status")
      .answeringTo("temp_source", "temp_status").number("temp_min_c", "temp_max_c")
      .answeringTo("body_np_source", "body_np_status").numberOrNone("body_n_pct_dm", "body_p_pct_dm")
      .answeringTo("growth_source", "growth_status").numberOrNone("growth_linf_cm", "growth_k_per_year");

  static final Table FAMILIES = Table.of("families", "families.csv", "family")
      .text("family").note("licence")
      .answeringTo("lwr_source", "lwr_status").number("lwr_a", "lwr_b", "n_species", "weight_g_at_15cm_median",
          "weight_g_at_15cm_p10", "weight_g_at_15cm_p90").word("length_type", "TL", "FL", "SL", "height")
      .answeringTo("metab_source", "metab_status").numberOrNone("active_metab_ratio_100g").note("metab_basis");

  static final Table SUPPLEMENTS = Table.of("supplements", "supplements.csv", "key")
      .text("key", "name", "supplies", "evidence_level", "dose_guidance")
      .keys("source", SOURCES_NAME).standing("status")
      .answeringTo("source", "status").numberOrNone("dose_min", "dose_max")
      .note("dose_unit", "dose_basis", "caution")
      .keysOrNone("matters_for_foods", "foods").keysOrNone("matters_for_guilds", "guilds", "all");

  static final Table DEFICIENCIES = Table.of("deficiencies", "deficiency.csv", "key")
      .text("key", "rule", "missing", "trigger", "sign_seen_by_keeper", "evidence", "offer").note("note")
      .answeringTo("source", "status").numberOrNone("limit", "window_days")
      .word("severity", "high", "medium", "low").word("sure", "measured", "practice", "weak")
      .keysOrNone("applies_to", "guilds", "all").keysOrNone("offer_foods", "foods");

  static final Table SOURCES = Table.of(SOURCES_NAME, "sources.csv", "key")
      .text("key", "citation", "licence").standing("status")
      .wordOrNone("read_as", "data set", "abstract", "excerpt", "through another source", "not read");

  static final Table CONSTANTS = Table.of("constants", "constants.csv", "key")
      .text("key", "unit", "what").note("note")
      .answeringTo("source", "status").number("value").numberOrNone("low", "high");

  static final Table RATION_MODELS = Table.of("rationModels", "ration_models.csv", "key")
      .text("key", "label").note("note").word("energy_basis", "digestible", "gross")
      .answeringTo("source", "status")
      .number("coefficient_kj", "mass_exponent", "temperature_slope", "reference_c", "min_c", "max_c")
      .numberOrNone("coefficient_low_kj", "coefficient_high_kj", "gain_a", "gain_b", "gain_slope", "body_energy_a",
          "body_energy_b", "growth_efficiency", "growth_cost_kj_per_g", "protein_g", "protein_exponent",
          "protein_per_gain_g");

  static final List<Table> ALL = List.of(FOODS, GUILDS, GUILD_COMPONENTS, SPECIES, FAMILIES, SUPPLEMENTS,
      DEFICIENCIES, SOURCES, CONSTANTS, RATION_MODELS);

  private Tables() {}
}
