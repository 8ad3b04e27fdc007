package provender.web;

/** One request for each calculation, as the API's description shows them. */
final class CalcExamples {
  static final String WEIGHT = "{\"lengthCm\": 20, \"lengthErrorCm\": 2.1, \"species\": \"Zebrasoma scopas\"}";
  static final String GROWTH =
      "{\"lInfCm\": 19, \"kPerYear\": 0.69, \"t0Years\": -0.021, \"a\": 0.02455, \"b\": 2.98, \"lengthCm\": 10, \"days\": 30}";
  static final String FOOD_ENERGY =
      "{\"waterGrams\": 8, \"proteinGrams\": 45, \"fatGrams\": 15, \"fibreGrams\": 2, \"ashGrams\": 10}";
  static final String RATION =
      "{\"temperatureC\": 26, \"fish\": [{\"id\": \"tangs\", \"weightGrams\": 120, \"count\": 3, \"guild\": \"turf_grazer\"}],"
          + " \"foods\": [{\"food\": \"nori_dried\"}]}";
  static final String PUBLISHED_RATION =
      "{\"temperatureC\": 24, \"model\": {\"name\": \"seabream2003\", \"growing\": true},"
          + " \"fish\": [{\"id\": \"one\", \"weightGrams\": 50}]}";
  static final String MEAL_SHARES =
      "{\"grams\": 12, \"exponent\": 0.8, \"eaters\": [{\"id\": \"tang\", \"weightGrams\": 120, \"preference\": 0.7},"
          + " {\"id\": \"trigger\", \"weightGrams\": 600, \"preference\": 0.2, \"capGrams\": 6}]}";
  static final String SELECTIVITY = "{\"offered\": [20, 30, 50], \"eaten\": [6, 3, 1]}";
  static final String DIET_BALANCE =
      "{\"guild\": \"turf_grazer\", \"lastDay\": \"2026-06-28\", \"windowDays\": 28,"
          + " \"intake\": [{\"date\": \"2026-06-28\", \"food\": \"nori_dried\", \"dryMatterGrams\": 2}]}";
  static final String DROPS =
      "{\"weighingsGrams\": [0.52, 0.47, 0.55, 0.49, 0.51], \"dropsPerWeighing\": 1, \"confidence\": 0.95, \"predictDrops\": [4]}";

  static final String PORTIONS =
      "{\"targetGrams\": 3, \"feeders\": [{\"id\": \"left\", \"gramsPerDrop\": 0.505, \"standardDeviationGrams\": 0.03, \"dropsWeighed\": 10,"
          + " \"times\": [\"08:00\", \"17:30\"], \"clearGrams\": 2, \"hopperGrams\": 200}]}";
  static final String NUTRIENTS =
      "{\"volumeLitres\": 2000, \"feeds\": [{\"gramsPerDay\": 100, \"proteinFraction\": 0.45, \"phosphorusFraction\": 0.012}],"
          + " \"uneatenFraction\": 0.1, \"retention\": {\"n\": 0, \"p\": 0}, \"exchange\": {\"fraction\": 0.2, \"everyDays\": 14},"
          + " \"exportMgLPerDay\": {\"nitrate\": 5}, \"start\": {\"nitrateMgL\": 20}, \"wantedPeak\": {\"nitrateMgL\": 50}, \"days\": 28}";

  private CalcExamples() {}
}
