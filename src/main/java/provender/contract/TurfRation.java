package provender.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import provender.engine.ration.TurfGrazer;
import provender.engine.source.Constant;
import provender.engine.source.Constants;
import provender.engine.source.Step;

/** {@code ration} with the line {@code turf2020}: tangs on natural turf, which eat for nitrogen and not for energy. */
final class TurfRation {
  private TurfRation() {}

  static Map<String, Object> answer(Question asked, List<RationFish> fish, double temperatureC, Constants constants) {
    double longest = constants.value(Constant.TANG_LINF_CM);
    List<Object> lines = new ArrayList<>();
    double energy = 0;
    double dry = 0;
    for (int i = 0; i < fish.size(); i++) {
      double grams = fish.get(i).eater().grams().value();
      double length = TurfGrazer.lengthCm(grams, constants);
      if (length >= longest) {
        asked.refuse("fish[" + i + "].weightGrams", "a mass below that of the longest fish of this line, 19 cm");
      } else if (!Double.isNaN(temperatureC)) {
        TurfGrazer tang = TurfGrazer.of(length, Math.max(1, temperatureC), constants);
        int count = fish.get(i).eater().count();
        energy += tang.energyKj() * count;
        dry += tang.dryGrams() * count;
        lines.add(line(fish.get(i).id(), tang));
      }
    }
    if (asked.isFaulty()) {
      return Map.of();
    }
    Step step =
        Step.of(
            "turfIntake",
            "max over carbon, nitrogen and phosphorus of need / assimilated / content of turf",
            dry,
            "g",
            constants.source(Constant.TANG_TURF_N),
            constants.input(Constant.TANG_TURF_N),
            constants.input(Constant.TANG_TURNOVER_N));
    return Shapes.object(
        "fish", lines,
        "energyKj", Shapes.object("low", energy, "value", energy, "high", energy),
        "energyBasis", "metabolised",
        "turfDryGrams", dry,
        "why", Shapes.steps(List.of(step)));
  }

  private static Map<String, Object> line(String id, TurfGrazer tang) {
    return Shapes.object(
        "id", id,
        "gainGramsPerDay", tang.gainGrams(),
        "energyKj", Shapes.object("value", tang.energyKj()),
        "turfDryGrams", tang.dryGrams(),
        "limitedBy", tang.limiting());
  }
}
