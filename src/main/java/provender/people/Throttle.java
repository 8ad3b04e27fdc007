package provender.people;

import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;

/** Slows down whoever keeps guessing: after five misses each further one doubles the wait, up to a minute. */
final class Throttle {
  private static final int FREE_TRIES = 5;
  private static final long LONGEST_SECONDS = 60;
  private static final int REMEMBERED = 10_000;

  private record Misses(int count, Instant last) {}

  /** The oldest is forgotten first, so that guessing under many names cannot fill the memory. */
  private final Map<String, Misses> missed =
      new LinkedHashMap<>() {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Misses> eldest) {
          return size() > REMEMBERED;
        }
      };

  synchronized Duration wait(String who, Instant now) {
    Misses misses = missed.get(who);
    if (misses == null || misses.count() < FREE_TRIES) {
      return Duration.ZERO;
    }
    long seconds = Math.min(LONGEST_SECONDS, 1L << Math.min(6, misses.count() - FREE_TRIES));
    Duration left = Duration.between(now, misses.last().plusSeconds(seconds));
    return left.isNegative() ? Duration.ZERO : left;
  }

  synchronized void failed(String who, Instant now) {
    Misses misses = missed.getOrDefault(who, new Misses(0, now));
    missed.put(who, new Misses(misses.count() + 1, now));
  }

  synchronized void succeeded(String who) {
    missed.remove(who);
  }
}
