package provender.sync;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** Where journals are kept: append-only, one order per tank. */
public interface JournalStore {

  /**
   * Does some writing to one journal while nobody else writes to it; when it returns, all of it is kept, and when it
   * throws, none of it is.
   */
  <T> T write(TankKey tank, Function<Writing, T> work);

  /** The entries after a place, in order, at most {@code limit}, with where the journal ends. */
  Page read(TankKey tank, long after, int limit);

  /** Where a journal ends, and which of its restorations it is. */
  Position position(TankKey tank);

  /** What each page of so many places adds up to, in their order. */
  List<Sum> sums(TankKey tank, int size);

  /** One journal while it is written to. */
  interface Writing {
    /** Those of some ids that are known already, asked for all at once. */
    Map<String, Known> known(Set<String> ids);

    /** All entries of some kinds, in order. */
    List<Stored> ofKinds(Set<String> kinds);

    /** Gives the entry the next place and keeps it. */
    Stored append(Envelope entry, Instant receivedAt);

    Position position();
  }

  /** An entry in its place; {@code written} is its JSON text as it was sent, {@code checksum} that of {@link Checksum}. */
  record Stored(long seq, String id, String written, Instant receivedAt, long checksum) {}

  /** An entry that is kept: where, and what it adds up to there. */
  record Known(long seq, long checksum) {}

  record Position(long head, String epoch) {}

  record Page(List<Stored> entries, Position position) {

    /** What its entries add up to. */
    public long checksum() {
      long sum = 0;
      for (Stored stored : entries) {
        sum = Checksum.sum(sum, stored.checksum());
      }
      return sum;
    }
  }

  /** What the entries in the places {@code from} to {@code to} add up to. */
  record Sum(long from, long to, long count, long checksum) {}
}
