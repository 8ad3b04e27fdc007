package provender.engine.source;

import java.util.ArrayList;
import java.util.List;
import provender.engine.quantity.Range;

/** A number as it is shown: with its honest range, how it was come by, and the steps that led to it. */
public record Figure(Range range, Basis basis, List<Step> why) {

  public static Figure of(Range range, Basis basis, Step... why) {
    return new Figure(range, basis, List.of(why));
  }

  public double value() {
    return range.value();
  }

  /** The reasons of this figure followed by one more step. */
  public List<Step> whyThen(Step... more) {
    List<Step> steps = new ArrayList<>(why);
    for (Step step : more) {
      steps.add(step);
    }
    return steps;
  }
}
