package provender.reference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What must be true of whole rows and of rows together. One method a rule; the method's name is the rule. */
final class TableRules {
  private static final double ROUNDING = 1e-9;
  private static final String[] BAND = {"min_share", "target_share", "max_share"};

  private final Map<Table, List<Row>> rows;
  private final Faults faults;

  TableRules(Map<Table, List<Row>> rows, Faults faults) {
    this.rows = rows;
    this.faults = faults;
  }

  void check() {
    of(Tables.FOODS).forEach(this::proximatesAddUpToAboutAHundred);
    of(Tables.SPECIES).forEach(this::gutPartsAddUpToAHundred);
    of(Tables.SPECIES).forEach(this::aMeasuredFitIsWhole);
    of(Tables.GUILD_COMPONENTS).forEach(this::componentsAreKnown);
    of(Tables.GUILD_COMPONENTS).forEach(this::aShareHasABandThatRises);
    componentsByGuild().values().forEach(this::targetsOfAGuildFillItsDiet);
    componentsByGuild().values().forEach(this::minimaOfAGuildLeaveRoom);
    of(Tables.CONSTANTS).forEach(this::aConstantLiesWithinItsRange);
  }

  private void proximatesAddUpToAboutAHundred(Row food) {
    if (!food.holds(Tables.PROXIMATES)) return;
    double sum = food.sum(Tables.PROXIMATES);
    if (sum < 97 || sum > 103)
      fault(Tables.FOODS, food, Tables.PROXIMATES[0],
          "water, protein, fat, carbohydrate and ash must add up to 97 to 103, add up to " + sum);
  }

  private void gutPartsAddUpToAHundred(Row species) {
    if (!species.holds(Tables.GUT_PARTS)) return;
    double sum = species.sum(Tables.GUT_PARTS);
    if (Math.abs(sum - 100) > 0.5)
      fault(Tables.SPECIES, species, Tables.GUT_PARTS[0], "gut parts must add up to 100, add up to " + sum);
  }

  private void aMeasuredFitIsWhole(Row species) {
    if (species.holds("measured_fit_a") && !species.holds("measured_fit_b", "measured_scatter_sd_log"))
      fault(Tables.SPECIES, species, "measured_fit_a", "needs measured_fit_b and measured_scatter_sd_log beside it");
  }

  private void componentsAreKnown(Row row) {
    var takes = List.of(isShare(row) ? Tables.COMPONENTS : Tables.FLAGS);
    if (!takes.contains(row.text("component")))
      fault(Tables.GUILD_COMPONENTS, row, "component", "'" + row.text("component") + "' is not a known component");
  }

  private void aShareHasABandThatRises(Row row) {
    if (isShare(row) && !row.holds(BAND))
      fault(Tables.GUILD_COMPONENTS, row, "target_share", "a share needs min_share, target_share and max_share");
    else if (row.holds(BAND) && !rises(row.sum("min_share"), row.sum("target_share"), row.sum("max_share"), 1))
      fault(Tables.GUILD_COMPONENTS, row, "target_share", "takes min_share <= target_share <= max_share <= 1");
  }

  private void targetsOfAGuildFillItsDiet(List<Row> guild) {
    double sum = guild.stream().mapToDouble(row -> row.sum("target_share")).sum();
    if (sum < 0.9 - ROUNDING || sum > 1 + ROUNDING)
      fault(Tables.GUILD_COMPONENTS, guild.get(0), "target_share",
          "targets of " + guild.get(0).text("guild") + " must add up to 0.9 to 1, add up to " + sum);
  }

  private void minimaOfAGuildLeaveRoom(List<Row> guild) {
    double sum = guild.stream().mapToDouble(row -> row.sum("min_share")).sum();
    if (sum > 1 + ROUNDING)
      fault(Tables.GUILD_COMPONENTS, guild.get(0), "min_share",
          "minima of " + guild.get(0).text("guild") + " must add up to at most 1, add up to " + sum);
  }

  private void aConstantLiesWithinItsRange(Row row) {
    if (row.holds("low", "value") && row.sum("low") > row.sum("value"))
      fault(Tables.CONSTANTS, row, "low", "is above the value");
    if (row.holds("high", "value") && row.sum("high") < row.sum("value"))
      fault(Tables.CONSTANTS, row, "high", "is below the value");
  }

  private Map<String, List<Row>> componentsByGuild() {
    var byGuild = new LinkedHashMap<String, List<Row>>();
    for (var row : of(Tables.GUILD_COMPONENTS))
      if (isShare(row)) byGuild.computeIfAbsent(row.text("guild"), guild -> new ArrayList<>()).add(row);
    return byGuild;
  }

  private static boolean isShare(Row row) {
    return row.text("kind").equals("share");
  }

  private static boolean rises(double... steps) {
    for (int i = 1; i < steps.length; i++) if (steps[i] < steps[i - 1] - ROUNDING) return false;
    return true;
  }

  private List<Row> of(Table table) {
    return rows.getOrDefault(table, List.of());
  }

  private void fault(Table table, Row row, String column, String says) {
    faults.add(table, row.line(), column, says);
  }
}
