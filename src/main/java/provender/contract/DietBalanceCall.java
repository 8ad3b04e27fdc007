package provender.contract;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import provender.engine.diet.Balance;
import provender.engine.diet.Intake;
import provender.engine.fish.Band;
import provender.engine.fish.Guild;
import provender.engine.food.Component;
import provender.engine.food.Food;
import provender.engine.quantity.Day;
import provender.engine.reference.Reference;
import provender.engine.source.Step;

/** {@code diet-balance}: what was eaten over a window, component by component, against a guild's bands. */
final class DietBalanceCall {
  private static final double MOST_GRAMS = 10_000_000;

  private DietBalanceCall() {}

  static Map<String, Object> answer(Question asked, Reference reference) {
    Guild guild = reference.guild(asked.text("guild"));
    int window = (int) asked.wholeOr("windowDays", 1, 366, 28);
    Day last = day(asked, "lastDay");
    Intake intake = new Intake(last, window);
    for (Question one : asked.list("intake")) {
      read(one, intake, reference);
    }
    if (guild == null) {
      asked.refuse("guild", "a key of the guild table");
    }
    asked.nothingElse();
    return asked.isFaulty() || guild == null ? Map.of() : answer(guild, intake, window, reference);
  }

  private static void read(Question one, Intake intake, Reference reference) {
    Day day = day(one, "date");
    double dry = one.number("dryMatterGrams", 0, MOST_GRAMS);
    List<String> supplements = one.textsOr("supplements");
    Food food = one.has("food") ? reference.food(one.text("food")) : null;
    Question parts = food == null ? one.inner("components") : null;
    if (food == null && parts == null) {
      one.refuse("food", "a key of the food table, or components instead");
    }
    double[] shares = food == null ? shares(parts) : shares(food);
    one.nothingElse();
    if (!one.isFaulty()) {
      intake.ate(day, dry, shares, supplements);
    }
  }

  private static double[] shares(Food food) {
    double[] shares = new double[Component.values().length];
    for (Component component : Component.values()) {
      shares[component.ordinal()] = food.share(component);
    }
    return shares;
  }

  private static double[] shares(@Nullable Question parts) {
    double[] shares = new double[Component.values().length];
    if (parts != null) {
      double sum = 0;
      for (Component component : Component.values()) {
        shares[component.ordinal()] = parts.numberOr(component.key(), 0, 1, 0);
        sum += component.isShare() ? shares[component.ordinal()] : 0;
      }
      parts.nothingElse();
      if (sum > 1 + 1e-9) {
        parts.refuse("other", "shares that add up to at most 1");
      }
    }
    return shares;
  }

  private static Map<String, Object> answer(Guild guild, Intake intake, int window, Reference reference) {
    List<Balance> balances = new ArrayList<>();
    for (Band band : guild.bands()) {
      balances.add(new Balance(band, intake.share(band.component()), intake.daysSince(band.component())));
    }
    List<Object> components = new ArrayList<>();
    List<Object> findings = new ArrayList<>();
    for (Balance balance : Balance.ordered(balances, window)) {
      Map<String, Object> shape = shape(balance, window);
      components.add(shape);
      if (balance.weight(window) > 0) {
        Map<String, Object> finding = new LinkedHashMap<>(shape);
        finding.put("offer", reference.foodsWith(balance.band().component()));
        findings.add(finding);
      }
    }
    Step step =
        Step.of(
            "dietShares",
            "Σ dry matter × share / Σ dry matter",
            intake.dryGrams(),
            "g",
            Step.ENTERED,
            Step.input("days", window, "d"));
    return Shapes.object(
        "components", components,
        "findings", findings,
        "dryMatterGrams", intake.dryGrams(),
        "supplements", intake.supplements(),
        "why", Shapes.steps(List.of(step)));
  }

  private static Map<String, Object> shape(Balance balance, int window) {
    Band band = balance.band();
    return Shapes.object(
        "component", band.component().key(),
        "share", balance.share(),
        "min", band.minShare(),
        "target", band.targetShare(),
        "max", band.maxShare(),
        "gapDays", (double) band.gapDays(),
        "daysSince", balance.daysSince(),
        "verdict", balance.verdict(window).key(),
        "source", band.source());
  }

  private static Day day(Question asked, String name) {
    try {
      return Day.parse(asked.text(name));
    } catch (IllegalArgumentException unreadable) {
      asked.refuse(name, "a day such as 2026-11-25");
      return Day.of(0);
    }
  }
}
