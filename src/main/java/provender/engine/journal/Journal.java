package provender.engine.journal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import provender.engine.feeder.AutoFeeder;
import provender.engine.intake.Helping;
import provender.engine.intake.Sighting;
import provender.engine.node.Node;
import provender.engine.quantity.Day;
import provender.engine.quantity.Moment;
import provender.engine.reference.Reference;

/** One tank's entries, taken in whatever order they arrive, and what they add up to. */
public final class Journal {
  private final Reference reference;
  private final Map<String, Kept> byId = new HashMap<>();
  private final SharedRecords records = new SharedRecords();
  private final Timeline feedings = new Timeline();
  private final Timeline observations = new Timeline();
  private final Timeline waterTests = new Timeline();
  private final Timeline exchanges = new Timeline();
  private final Timeline dosings = new Timeline();
  private final Timeline weighings = new Timeline();
  private final Timeline fills = new Timeline();
  private final List<Timeline> timelines = List.of(feedings, observations, waterTests, exchanges, dosings, weighings, fills);
  /** The tables with the own foods as last read; null when a record may have changed since. */
  private @Nullable Reference known;

  public Journal(Reference reference) {
    this.reference = reference;
  }

  /** Takes one entry; the same one again changes nothing but the place the server gave it since. */
  public void take(Node written) {
    Entry entry = new Entry(written);
    if (entry.id().isEmpty()) {
      return;
    }
    Kept kept = kept(entry.id());
    boolean isNew = kept.entry() == null;
    kept.is(entry);
    String target = entry.body().text("entry", "");
    switch (entry.kind()) {
      case "feeding" -> feedings.add(kept, isNew);
      case "observation" -> observations.add(kept, isNew);
      case "water-test" -> waterTests.add(kept, isNew);
      case "exchange" -> exchanges.add(kept, isNew);
      case "dosing" -> dosings.add(kept, isNew);
      case "weighing" -> weighings.add(kept, isNew);
      case "hopper-fill" -> fills.add(kept, isNew);
      case "record" -> {
        records.take(entry, kept);
        known = null;
      }
      case "amendment" -> {
        kept(target).amendedBy(entry);
        for (Timeline timeline : timelines) {
          timeline.moved();
        }
        records.moved();
        known = null;
      }
      case "withdrawal" -> {
        kept(target).withdrawnBy(entry);
        records.moved();
        known = null;
      }
      default -> {
        // A kind of a later day: kept by whoever stores it, without meaning here.
      }
    }
  }

  /** The published tables, and the foods this tank's keepers wrote down. */
  public Reference reference() {
    Reference now = known;
    if (now == null) {
      now = reference.with(OwnFoods.read(records, reference.constants()));
      known = now;
    }
    return now;
  }

  /** The tank as its keepers set it up and observed it. */
  public Tank tank() {
    return new Roster(reference, records, observations).tank();
  }

  /** The feedings from a day on, oldest first, withdrawn ones left out. */
  public List<Feeding> feedingsSince(Day first) {
    return feedings(first, false);
  }

  /** The feedings from a day on that someone took back, oldest first. */
  public List<Feeding> withdrawnSince(Day first) {
    return feedings(first, true);
  }

  /** The day of the first feeding, or null in an empty journal. */
  public @Nullable Day firstFeedingDay() {
    for (Kept kept : feedings.all()) {
      Moment at = kept.at();
      if (at != null && !kept.isWithdrawn()) {
        return at.day();
      }
    }
    return null;
  }

  /** What people saw fish take or refuse from a day on, at the glass or while feeding. */
  public List<Sighting> sightingsSince(Day first) {
    List<Sighting> seen = new ArrayList<>();
    for (Kept kept : observations.since(first)) {
      Entry entry = kept.entry();
      Moment at = kept.at();
      if (entry != null && at != null && !kept.isWithdrawn()) {
        Node body = kept.body(entry);
        String saw = body.text("saw", "");
        if (saw.equals("ate") || saw.equals("refused")) {
          seen.add(new Sighting(body.text("fish", ""), body.text("food", ""), saw.equals("ate"), at.day().epochDay()));
        }
      }
    }
    for (Feeding feeding : feedingsSince(first)) {
      for (String fish : feeding.meal().refusedBy()) {
        for (Helping helping : feeding.meal().helpings()) {
          seen.add(new Sighting(fish, helping.foodKey(), false, feeding.at().day().epochDay()));
        }
      }
    }
    return seen;
  }

  /** The water tests that stand, oldest first. */
  public List<WaterTest> waterTests() {
    return WaterLog.tests(waterTests);
  }

  /** The exchanges of water that stand, oldest first. */
  public List<Exchange> exchanges() {
    return WaterLog.exchanges(exchanges);
  }

  /** When something was put in to take nutrients out, such as media or a source of carbon, oldest first. */
  public List<Moment> dosings() {
    return WaterLog.moments(dosings);
  }

  /** An entry and every later one that changed it, took it back or brought it back, in the order in which they count. */
  public List<Node> history(String id) {
    return kept(id).history();
  }

  /** Changes that wait for a person to decide. */
  public List<Conflict> conflicts() {
    return records.conflicts();
  }

  /** What stands in the fields that can harm: whoever changes one says which place they had seen. */
  public List<Guarded> guarded() {
    return records.guarded();
  }

  /** The tank's auto-feeders with their history. */
  public List<AutoFeeder> feeders() {
    return new Feeders(records, weighings, fills, reference.constants()).all();
  }

  private List<Feeding> feedings(Day first, boolean withdrawn) {
    Reference known = reference();
    List<Feeding> found = new ArrayList<>();
    for (Kept kept : feedings.since(first)) {
      if (kept.isWithdrawn() == withdrawn) {
        Feeding feeding = kept.feeding(known);
        if (feeding != null) {
          found.add(feeding);
        }
      }
    }
    return found;
  }

  private Kept kept(String id) {
    return byId.computeIfAbsent(id, key -> new Kept());
  }
}
