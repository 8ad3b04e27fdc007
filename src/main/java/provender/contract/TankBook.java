package provender.contract;

import java.util.List;
import java.util.Map;
import provender.engine.journal.Journal;
import provender.engine.node.Node;
import provender.engine.quantity.Moment;
import provender.engine.reference.Reference;
import provender.engine.today.Today;

/** One tank's journal, fed with entries as they are written, answering how things stand. */
public final class TankBook {
  public static final int LOOK_BACK_DAYS = Today.LOOK_BACK_DAYS;

  private final Reference reference;
  private final Journal journal;

  public TankBook(Reference reference) {
    this.reference = reference;
    this.journal = new Journal(reference);
  }

  /** Takes entries in any order; known ones change nothing but the place the server gave them since. */
  public void take(List<Node> entries) {
    for (Node entry : entries) {
      journal.take(entry);
    }
  }

  /** How things stand at a local time such as {@code 2026-11-25T08:10:00+01:00}. */
  public Map<String, Object> today(String now) {
    return TodayShape.of(read(now));
  }

  /** What feeding does to the water at such a time. */
  public Map<String, Object> water(String now) {
    return WaterShape.of(read(now));
  }

  /** An entry and every later one that changed it, took it back or brought it back. */
  public List<Node> history(String entry) {
    return journal.history(entry);
  }

  /** Who is reckoned to have got how much of one of the last days' feedings. */
  public List<Object> shares(String now, String feeding) {
    return FeedingShape.shares(read(now).feedings(TodayShape.FEEDINGS_DAYS), feeding);
  }

  private Today read(String now) {
    return Today.of(journal, journal.reference(), Moment.parse(now));
  }
}
