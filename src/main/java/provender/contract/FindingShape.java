package provender.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import provender.engine.diet.Finding;
import provender.engine.food.Component;

/** A finding as JSON; its key stays the same from day to day while the same rule concerns the same fish. */
final class FindingShape {
  private FindingShape() {}

  static Map<String, Object> of(Finding finding) {
    Component component = finding.component();
    List<Object> offers = new ArrayList<>();
    for (Finding.Offer offer : finding.offers()) {
      offers.add(Shapes.object("food", offer.food(), "grams", offer.grams()));
    }
    return Shapes.object(
        "key", finding.rule().key() + ":" + (finding.about() == null ? String.join(",", finding.fish()) : finding.about()),
        "rule", finding.rule().key(),
        "severity", finding.rule().severity(),
        "fish", finding.fish(),
        "component", component == null ? null : component.key(),
        "about", finding.about(),
        "sinceDay", (double) finding.since().epochDay(),
        "days", (double) finding.days(),
        "sure", finding.rule().sure(),
        "source", finding.rule().sources(),
        "offer", offers,
        "facts", Shapes.numbers(finding.facts()),
        "why", Shapes.steps(finding.why()));
  }
}
