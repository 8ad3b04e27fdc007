package provender.engine.journal;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.engine.quantity.Day;
import provender.engine.quantity.Moment;

/** Entries of one kind in the order in which they happened; sorted only when someone asks after a change. */
final class Timeline {
  private final List<Kept> entries = new ArrayList<>();
  private boolean inOrder = true;

  void add(Kept kept, boolean isNew) {
    if (isNew) {
      entries.add(kept);
    }
    inOrder = false;
  }

  /** Something may have been given another time. */
  void moved() {
    inOrder = false;
  }

  List<Kept> all() {
    if (!inOrder) {
      entries.sort(Timeline::byTime);
      inOrder = true;
    }
    return entries;
  }

  /** Those that happened on a day or later. */
  List<Kept> since(Day first) {
    List<Kept> all = all();
    int from = all.size();
    while (from > 0 && !isBefore(all.get(from - 1).at(), first)) {
      from--;
    }
    List<Kept> since = new ArrayList<>();
    for (int i = from; i < all.size(); i++) {
      since.add(all.get(i));
    }
    return since;
  }

  private static boolean isBefore(@Nullable Moment at, Day day) {
    return at == null || at.day().isBefore(day);
  }

  /** What has no readable time sorts before everything else; at the same minute the id decides, alike on every copy. */
  private static int byTime(Kept one, Kept other) {
    Moment a = one.at();
    Moment b = other.at();
    int byTime = a == null || b == null ? Boolean.compare(a != null, b != null) : a.compareTo(b);
    return byTime != 0 ? byTime : id(one).compareTo(id(other));
  }

  private static String id(Kept kept) {
    Entry entry = kept.entry();
    return entry == null ? "" : entry.id();
  }
}
