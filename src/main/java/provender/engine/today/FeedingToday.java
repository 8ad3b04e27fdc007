package provender.engine.today;

import java.util.ArrayList;
import java.util.List;
import provender.engine.diet.Review;
import provender.engine.fish.Fish;
import provender.engine.food.Food;
import provender.engine.intake.Helping;
import provender.engine.intake.Serving;
import provender.engine.journal.Feeding;
import provender.engine.quantity.Range;

/** A feeding with what the fish are reckoned to have eaten of it. */
public record FeedingToday(Feeding feeding, List<Serving> servings, Review review) {

  /** What one line of the roster is reckoned to have got. */
  public record Share(Fish fish, double grams, double kj) {}

  /** One line per fish that got any, its helpings added up. */
  public List<Share> shares() {
    List<Share> shares = new ArrayList<>();
    for (int i = 0; i < review.diets().size(); i++) {
      double grams = 0;
      double kj = 0;
      for (Serving serving : servings) {
        grams += serving.grams(i);
        kj += serving.kj(i);
      }
      if (grams > 0) {
        shares.add(new Share(review.diets().get(i).fish(), grams, kj));
      }
    }
    return shares;
  }

  /** Digestible energy of one helping as offered, in kJ; nothing for a food the tables lack. */
  public static Range kj(Helping helping) {
    Food food = helping.food();
    return food == null ? Range.ZERO : food.energy().range().times(food.edibleFraction() * helping.grams());
  }

  /** Energy of a feeding that went to the display, less what was left over. */
  static Range toDisplay(Feeding feeding, List<Fish> roster) {
    Range kj = Range.ZERO;
    double eaten = 1 - feeding.meal().leftoverFraction();
    for (Helping helping : feeding.meal().helpings()) {
      if (!helping.goesToIsolation(roster)) {
        kj = kj.plus(kj(helping).times(helping.fish() == null ? eaten : 1));
      }
    }
    return kj;
  }
}
