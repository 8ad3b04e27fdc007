package provender.engine.journal;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.engine.node.Node;
import provender.engine.quantity.Moment;

/** Reads what people noted about the water: tests, exchanges, and what was put in to take nutrients out. */
final class WaterLog {
  private WaterLog() {}

  static List<WaterTest> tests(Timeline timeline) {
    List<WaterTest> tests = new ArrayList<>();
    for (Kept kept : timeline.all()) {
      Node body = standing(kept);
      Moment at = kept.at();
      if (body != null && at != null) {
        tests.add(
            new WaterTest(
                at,
                body.number("temperatureC", Double.NaN),
                amount(body, "nitrateMgL"),
                amount(body, "phosphateMgL"),
                amount(body, "ammoniaMgL"),
                amount(body, "alkalinityDkh"),
                amount(body, "salinityPpt")));
      }
    }
    return tests;
  }

  static List<Exchange> exchanges(Timeline timeline) {
    List<Exchange> exchanges = new ArrayList<>();
    for (Kept kept : timeline.all()) {
      Node body = standing(kept);
      Moment at = kept.at();
      if (body != null && at != null && body.number("litres", 0) > 0) {
        exchanges.add(
            new Exchange(
                at,
                body.number("litres", 0),
                Math.max(0, body.number("sourceNitrateMgL", 0)),
                Math.max(0, body.number("sourcePhosphateMgL", 0))));
      }
    }
    return exchanges;
  }

  static List<Moment> moments(Timeline timeline) {
    List<Moment> moments = new ArrayList<>();
    for (Kept kept : timeline.all()) {
      Moment at = kept.at();
      if (standing(kept) != null && at != null) {
        moments.add(at);
      }
    }
    return moments;
  }

  private static @Nullable Node standing(Kept kept) {
    Entry entry = kept.entry();
    return entry == null || kept.isWithdrawn() ? null : kept.body(entry);
  }

  /** What cannot be an amount was not tested; the entry itself keeps what was written. */
  private static double amount(Node body, String name) {
    double amount = body.number(name, Double.NaN);
    return amount >= 0 && !Double.isInfinite(amount) ? amount : Double.NaN;
  }
}
