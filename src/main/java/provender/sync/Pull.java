package provender.sync;

import java.util.List;
import provender.sync.JournalStore.Page;
import provender.sync.JournalStore.Sum;

/** Gives out a journal in pages, in the order of its places. */
public final class Pull {
  public static final int MOST_ENTRIES = 500;

  private final JournalStore journals;

  public Pull(JournalStore journals) {
    this.journals = journals;
  }

  /** The page after a place; there is more while its last entry stands before the head. */
  public Page after(TankKey tank, long after, int limit) {
    return journals.read(tank, after, Math.min(limit, MOST_ENTRIES));
  }

  /** What each page of so many places adds up to: a phone compares and fetches anew only what differs. */
  public List<Sum> checksums(TankKey tank, int size) {
    return journals.sums(tank, size);
  }
}
