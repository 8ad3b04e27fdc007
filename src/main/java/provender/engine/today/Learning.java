package provender.engine.today;

import java.util.ArrayList;
import java.util.List;
import provender.engine.diet.FishDiet;
import provender.engine.diet.Review;
import provender.engine.fish.Measurement;
import provender.engine.quantity.Day;
import provender.engine.ration.TankFactor;
import provender.engine.source.Constant;
import provender.engine.source.Constants;

/** Gathers what weighings within the review say about the tank's own factor. */
final class Learning {
  private Learning() {}

  static List<TankFactor.Evidence> evidence(Review review, Constants constants) {
    List<TankFactor.Evidence> evidence = new ArrayList<>();
    for (FishDiet diet : review.diets()) {
      Measurement before = null;
      for (Measurement measurement : diet.fish().measurements()) {
        if (measurement.isWeighed() && !measurement.on().isBefore(review.day(0))) {
          if (before != null && measurement.on().since(before.on()) >= constants.value(Constant.EVIDENCE_DAYS)) {
            evidence.add(between(diet, before, measurement, review.day(0)));
          }
          before = measurement;
        }
      }
    }
    return evidence;
  }

  private static TankFactor.Evidence between(FishDiet diet, Measurement first, Measurement last, Day zero) {
    int from = first.on().since(zero);
    int to = last.on().since(zero);
    int count = diet.fish().count();
    return new TankFactor.Evidence(
        diet.gotKj(from, to),
        diet.dueKj(from, to),
        (first.grams() + last.grams()) / 2,
        (last.grams() - first.grams()) * count);
  }
}
