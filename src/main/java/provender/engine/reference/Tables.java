package provender.engine.reference;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import provender.engine.fish.Band;
import provender.engine.fish.GrowthCurve;
import provender.engine.fish.Guild;
import provender.engine.fish.LengthWeight;
import provender.engine.fish.Species;
import provender.engine.food.Component;
import provender.engine.food.Composition;
import provender.engine.food.Food;
import provender.engine.node.Node;
import provender.engine.quantity.Range;
import provender.engine.ration.PublishedModel;
import provender.engine.source.Constant;
import provender.engine.source.Constants;

/** Turns rows of the reference tables into what the engine reckons with. */
final class Tables {
  private final Node tables;

  Tables(Node tables) {
    this.tables = tables;
  }

  Reference reference() {
    Constants constants = constants();
    return new Reference(foods(constants), guilds(), species(constants), families(constants), rules(), models(), constants);
  }

  private Constants constants() {
    Map<String, Constants.Row> rows = new HashMap<>();
    for (Node row : tables.nodes("constants")) {
      double value = row.number("value", Double.NaN);
      Range range = Range.around(row.number("low", value), value, row.number("high", value));
      rows.put(row.text("key", ""), new Constants.Row(range, row.text("unit", ""), firstOf(row.text("source", ""))));
    }
    return new Constants(rows);
  }

  private Map<String, Food> foods(Constants constants) {
    Map<String, Food> foods = new LinkedHashMap<>();
    for (Node row : tables.nodes("foods")) {
      foods.put(row.text("key", ""), food(row, constants));
    }
    return foods;
  }

  private static Food food(Node row, Constants constants) {
    List<String> flags = parts(row.text("flags", ""));
    double[] shares = new double[Component.values().length];
    for (String part : parts(row.text("component_shares", ""))) {
      int colon = part.indexOf(':');
      Component component = Component.of(part.substring(0, colon));
      if (component != null) {
        shares[component.ordinal()] = decimal(part.substring(colon + 1));
      }
    }
    for (Component component : Component.values()) {
      if (!component.isShare() && flags.contains(component.key())) {
        shares[component.ordinal()] = 1;
      }
    }
    if (row.text("thiaminase", "").equals("yes")) {
      flags.add("thiaminase");
    }
    Composition composition =
        new Composition(
            row.number("water_g_per_100g", 0),
            row.number("protein_g", 0),
            row.number("fat_g", 0),
            row.number("carb_g", 0),
            row.number("fibre_g", 0),
            row.number("ash_g", 0),
            row.number("phosphorus_mg", Double.NaN));
    return new Food(
        row.text("key", ""),
        row.text("category", ""),
        composition,
        row.number("edible_fraction", 1),
        shares,
        flags,
        firstOf(row.text("source", "")),
        constants);
  }

  private Map<String, Guild> guilds() {
    Map<String, List<Band>> bands = new HashMap<>();
    for (Node row : tables.nodes("guildComponents")) {
      Component component = Component.of(row.text("component", ""));
      if (component != null) {
        bands.computeIfAbsent(row.text("guild", ""), guild -> new ArrayList<>()).add(band(row, component));
      }
    }
    Map<String, Guild> guilds = new LinkedHashMap<>();
    for (Node row : tables.nodes("guilds")) {
      String key = row.text("guild", "");
      guilds.put(
          key,
          new Guild(
              key,
              row.number("ration_factor", 1),
              firstOf(row.text("ration_source", "")),
              row.number("meals_per_day_target", 1),
              row.text("warning_level", "info"),
              bands.getOrDefault(key, List.of())));
    }
    return guilds;
  }

  private static Band band(Node row, Component component) {
    return new Band(
        component,
        row.number("min_share", Double.NaN),
        row.number("target_share", Double.NaN),
        row.number("max_share", Double.NaN),
        (int) row.number("max_days_between", 365),
        firstOf(row.text("source", "")));
  }

  private Map<String, Species> species(Constants constants) {
    Map<String, Species> species = new LinkedHashMap<>();
    for (Node row : tables.nodes("species")) {
      String name = row.text("scientific_name", "");
      species.put(
          name,
          new Species(
              name,
              row.text("common_name", name),
              row.text("family", ""),
              row.text("guild", ""),
              row.number("max_length_cm", constants.value(Constant.UNKNOWN_LENGTH_CM)),
              lengthWeight(row, constants),
              hardFoodGapDays(row.text("wear_need", "none")),
              "practice",
              growth(row)));
    }
    return species;
  }

  private static @Nullable GrowthCurve growth(Node row) {
    double longest = row.number("growth_linf_cm", 0);
    return longest > 0
        ? new GrowthCurve(longest, row.number("growth_k_per_year", 0), firstOf(row.text("growth_source", "")))
        : null;
  }

  private Map<String, LengthWeight> families(Constants constants) {
    Map<String, LengthWeight> families = new LinkedHashMap<>();
    for (Node row : tables.nodes("families")) {
      families.put(row.text("family", ""), lengthWeight(row, constants));
    }
    return families;
  }

  /** A relation fitted to real fish wins; then a table's relation scaled to real fish; then the table as it stands. */
  private static LengthWeight lengthWeight(Node row, Constants constants) {
    String type = row.text("length_type", "TL");
    double fittedA = row.number("measured_fit_a", Double.NaN);
    double factor = row.number("measured_weight_factor", Double.NaN);
    double twoSd = 1.96 * row.number("measured_scatter_sd_log", 0.2);
    Range scatter = new Range(Math.exp(-twoSd), 1, Math.exp(twoSd));
    String measured = firstOf(row.text("measured_source", ""));
    if (!Double.isNaN(fittedA)) {
      return new LengthWeight(fittedA, row.number("measured_fit_b", 3), type, scatter, measured);
    }
    if (!Double.isNaN(factor)) {
      double a = row.number("lwr_a", Double.NaN) * factor;
      return new LengthWeight(a, row.number("lwr_b", Double.NaN), type, scatter, measured);
    }
    double band = constants.value(Constant.TABLE_WEIGHT_BAND);
    return new LengthWeight(
        row.number("lwr_a", Double.NaN),
        row.number("lwr_b", Double.NaN),
        type,
        new Range(1 - band, 1, 1 + band),
        firstOf(row.text("lwr_source", "")));
  }

  private static int hardFoodGapDays(String wearNeed) {
    return switch (wearNeed) {
      case "high" -> 3;
      case "medium" -> 7;
      default -> 0;
    };
  }

  private Map<String, DietRule> rules() {
    Map<String, DietRule> rules = new LinkedHashMap<>();
    for (Node row : tables.nodes("deficiencies")) {
      String key = row.text("key", "");
      rules.put(
          key,
          new DietRule(
              key,
              parts(row.text("applies_to", "")),
              row.text("severity", "medium"),
              row.text("sure", "practice"),
              parts(row.text("source", "")),
              parts(row.text("offer_foods", "")),
              row.number("limit", Double.NaN),
              (int) row.number("window_days", 0)));
    }
    return rules;
  }

  private Map<String, PublishedModel> models() {
    Map<String, PublishedModel> models = new LinkedHashMap<>();
    for (Node row : tables.nodes("rationModels")) {
      models.put(row.text("key", ""), PublishedModels.read(row, firstOf(row.text("source", ""))));
    }
    return models;
  }

  /** A plain decimal such as 0.25; the language's own reader would make the phone's engine a fifth larger. */
  private static double decimal(String text) {
    double digits = 0;
    double scale = 1;
    boolean afterPoint = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '.') {
        afterPoint = true;
      } else {
        digits = digits * 10 + (c - '0');
        scale = afterPoint ? scale * 10 : scale;
      }
    }
    return digits / scale;
  }

  private static String firstOf(String joined) {
    List<String> parts = parts(joined);
    return parts.isEmpty() ? "practice" : parts.get(0);
  }

  private static List<String> parts(String joined) {
    List<String> parts = new ArrayList<>();
    int from = 0;
    while (from < joined.length()) {
      int bar = joined.indexOf('|', from);
      int end = bar < 0 ? joined.length() : bar;
      if (end > from) {
        parts.add(joined.substring(from, end));
      }
      from = end + 1;
    }
    return parts;
  }
}
