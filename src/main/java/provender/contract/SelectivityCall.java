package provender.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import provender.engine.intake.Selectivity;
import provender.engine.reference.Reference;
import provender.engine.source.Step;

/** {@code selectivity}: what a fish chose from what it was offered. */
final class SelectivityCall {
  private static final double MOST = 1e9;

  private SelectivityCall() {}

  static Map<String, Object> answer(Question asked, Reference reference) {
    double[] offered = asked.numbers("offered", 2, Double.MIN_VALUE, MOST);
    double[] eaten = asked.numbers("eaten", 2, 0, MOST);
    asked.nothingElse();
    if (!asked.isFaulty() && offered.length != eaten.length) {
      asked.refuse("eaten", "as many numbers as offered");
    }
    double sum = 0;
    for (int i = 0; i < eaten.length && !asked.isFaulty(); i++) {
      sum += eaten[i];
      if (eaten[i] > offered[i]) {
        asked.refuse("eaten[" + i + "]", "at most what was offered");
      }
    }
    if (!asked.isFaulty() && sum <= 0) {
      asked.refuse("eaten", "at least one number above 0");
    }
    if (asked.isFaulty()) {
      return Map.of();
    }
    Selectivity chosen = Selectivity.of(offered, eaten);
    List<Object> foods = new ArrayList<>();
    for (int i = 0; i < offered.length; i++) {
      foods.add(
          Shapes.object(
              "ivlev", chosen.ivlev()[i],
              "jacobs", chosen.jacobs()[i],
              "manly", chosen.manly()[i],
              "vanderploegScavia", chosen.scavia()[i],
              "manlyDepleted", chosen.manlyDepleted()[i]));
    }
    Step step =
        Step.of("selectivity", "E, D, α and E* after Lechowicz", sum, "", "lechowicz1982", Step.input("foods", offered.length, ""));
    return Shapes.object("foods", foods, "why", Shapes.steps(List.of(step)));
  }
}
