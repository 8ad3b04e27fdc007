package provender.engine.journal;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.engine.intake.Helping;
import provender.engine.intake.Meal;
import provender.engine.node.Node;
import provender.engine.quantity.Moment;
import provender.engine.reference.Reference;

/** A feeding as it stands after corrections. */
public record Feeding(
    String id, Moment at, String by, boolean fromFeeder, Meal meal, String note, boolean corrected, boolean sent) {

  /** What an auto-feeder is reckoned to have given; nobody wrote it down, so there is nothing to correct or take back. */
  public static Feeding reckoned(Moment at, Meal meal) {
    return new Feeding("", at, "", true, meal, "", false, true);
  }

  public boolean isReckoned() {
    return id.isEmpty();
  }

  static @Nullable Feeding read(Kept kept, Reference reference) {
    Entry entry = kept.entry();
    Moment at = kept.at();
    if (entry == null || at == null) {
      return null;
    }
    Node body = kept.body(entry);
    List<Helping> helpings = new ArrayList<>();
    for (Node item : body.nodes("items")) {
      helpings.add(helping(item, reference));
    }
    Meal meal = new Meal(helpings, amount(body, "leftoverGrams"), body.texts("refusedBy"));
    return new Feeding(
        entry.id(),
        at,
        entry.by(),
        body.text("source", "hand").equals("feeder"),
        meal,
        body.text("note", ""),
        kept.isCorrected(),
        entry.isSent());
  }

  private static Helping helping(Node item, Reference reference) {
    String food = item.text("food", "");
    String fish = item.text("fish", "");
    return new Helping(
        food,
        reference.food(food),
        amount(item, "grams"),
        item.text("measure", ""),
        item.number("count", 0),
        item.texts("supplements"),
        fish.isEmpty() ? null : fish);
  }

  /** What cannot be an amount counts as nothing; the entry itself keeps what was written. */
  private static double amount(Node node, String name) {
    double amount = node.number(name, 0);
    return amount > 0 && !Double.isInfinite(amount) ? amount : 0;
  }
}
