package provender.sync;

import provender.sync.JournalStore.Page;

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
}
