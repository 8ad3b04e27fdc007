package provender.engine.source;

/** The constants the engine reckons with; their values, ranges and sources are read from the constants table. */
public enum Constant {
  MAINTENANCE_KJ("maintenance_kj"),
  MASS_EXPONENT("mass_exponent"),
  TEMPERATURE_SLOPE("temperature_slope"),
  REFERENCE_TEMPERATURE_C("reference_temperature_c"),
  MODEL_MIN_C("model_min_c"),
  MODEL_MAX_C("model_max_c"),
  ALARM_C("alarm_c"),
  FALLBACK_TEMPERATURE_C("fallback_temperature_c"),
  GROSS_PROTEIN_KJ("gross_protein_kj"),
  GROSS_FAT_KJ("gross_fat_kj"),
  GROSS_CARBOHYDRATE_KJ("gross_carbohydrate_kj"),
  DIGEST_PROTEIN("digest_protein"),
  DIGEST_FAT("digest_fat"),
  DIGEST_CARBOHYDRATE("digest_carbohydrate"),
  ALGAE_DIGEST_PROTEIN("algae_digest_protein"),
  ALGAE_DIGEST_FAT("algae_digest_fat"),
  ALGAE_DIGEST_CARBOHYDRATE("algae_digest_carbohydrate"),
  ALGAE_DIGEST_LOW("algae_digest_low"),
  ALGAE_DIGEST_HIGH("algae_digest_high"),
  GLASS_LENGTH_ERROR_CM("glass_length_error_cm"),
  TABLE_WEIGHT_BAND("table_weight_band"),
  STALE_DAYS("stale_days"),
  MAX_INTAKE_RATIO("max_intake_ratio"),
  FLOOR_PREFERENCE("floor_preference"),
  TAKEN_FRACTION("taken_fraction"),
  OVERFED_RATIO("overfed_ratio"),
  UNDERFED_RATIO("underfed_ratio"),
  WINDOW_DAYS("window_days"),
  UNKNOWN_LENGTH_PART("unknown_length_part"),
  UNKNOWN_LENGTH_CM("unknown_length_cm"),
  UNKNOWN_LENGTH_WEIGHT_A("unknown_length_weight_a"),
  UNKNOWN_LENGTH_WEIGHT_B("unknown_length_weight_b"),
  GROWTH_BODY_ENERGY_A("growth_body_energy_a"),
  GROWTH_BODY_ENERGY_B("growth_body_energy_b"),
  GROWTH_EFFICIENCY("growth_efficiency"),
  PERCENT_BODY_LOW("percent_body_low"),
  PERCENT_BODY_HIGH("percent_body_high"),
  PREFERENCE_PRIOR_SIGHTINGS("preference_prior_sightings"),
  EVIDENCE_SD_LOG("evidence_sd_log"),
  EVIDENCE_DAYS("evidence_days"),
  PRIOR_FACTOR_SD_LOG("prior_factor_sd_log"),
  CONDITION_STEP("condition_step"),
  FASTING_KJ("fasting_kj"),
  FASTING_EXPONENT("fasting_exponent"),
  FASTING_KJ_PER_G("fasting_kj_per_g"),
  OILY_FAT_G("oily_fat_g"),
  TANG_LWA("tang_lwa"),
  TANG_LWB("tang_lwb"),
  TANG_LINF_CM("tang_linf_cm"),
  TANG_K("tang_k"),
  TANG_F0("tang_f0"),
  TANG_ALPHA("tang_alpha"),
  TANG_SCOPE("tang_scope"),
  TANG_TROPHIC("tang_trophic"),
  TANG_FIN("tang_fin"),
  TANG_BODY_C("tang_body_c"),
  TANG_BODY_N("tang_body_n"),
  TANG_BODY_P("tang_body_p"),
  TANG_TURF_C("tang_turf_c"),
  TANG_TURF_N("tang_turf_n"),
  TANG_TURF_P("tang_turf_p"),
  TANG_ASSIM_C("tang_assim_c"),
  TANG_ASSIM_N("tang_assim_n"),
  TANG_ASSIM_P("tang_assim_p"),
  TANG_TURNOVER_N("tang_turnover_n"),
  TANG_TURNOVER_P("tang_turnover_p"),
  TANG_DRY_PART("tang_dry_part"),
  TANG_KJ_PER_G_C("tang_kj_per_g_c");

  private final String key;

  Constant(String key) {
    this.key = key;
  }

  public String key() {
    return key;
  }
}
