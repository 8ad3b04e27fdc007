package provender.engine.diet;

import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.engine.food.Component;
import provender.engine.quantity.Day;
import provender.engine.reference.DietRule;
import provender.engine.source.Step;

/**
 * Something that is wrong and can be mended: which rule found it, which fish it concerns (none: the whole display), since
 * when, the facts, and what to offer.
 *
 * @param about the key of the auto-feeder it concerns, or null
 * @param since the last day on which all was well
 * @param facts numbers for the sentence on screen
 */
public record Finding(
    DietRule rule,
    List<String> fish,
    @Nullable Component component,
    @Nullable String about,
    Day since,
    int days,
    List<Offer> offers,
    List<Step.Input> facts,
    List<Step> why) {

  /** One that concerns fish, or the whole display. */
  Finding(
      DietRule rule,
      List<String> fish,
      @Nullable Component component,
      Day since,
      int days,
      List<Offer> offers,
      List<Step.Input> facts,
      List<Step> why) {
    this(rule, fish, component, null, since, days, offers, facts, why);
  }

  /** A food that mends it, and how many grams of it for one day. */
  public record Offer(String food, double grams) {}

  /** Heavier findings first: severity, then how many fish, then how long. */
  public static int byWeight(Finding one, Finding other) {
    int bySeverity = Integer.compare(severity(one), severity(other));
    if (bySeverity != 0) {
      return bySeverity;
    }
    int byFish = Integer.compare(other.fish.size(), one.fish.size());
    return byFish != 0 ? byFish : Integer.compare(other.days, one.days);
  }

  private static int severity(Finding finding) {
    return switch (finding.rule.severity()) {
      case "high" -> 0;
      case "medium" -> 1;
      default -> 2;
    };
  }
}
