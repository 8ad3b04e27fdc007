package provender.web;

import jakarta.inject.Singleton;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * How much one person, one household and one address may ask in a minute: far more than feeding takes, and too little to
 * empty or flood a server with. Each has a store of requests that fills up again evenly.
 */
@Singleton
class Rates {
  private static final int REMEMBERED = 10_000;
  private static final double NANOS_PER_MINUTE = Duration.ofMinutes(1).toNanos();

  private final int perMinute;

  /** The one not seen for longest is forgotten first; whoever is forgotten begins with a full store. */
  private final Map<String, Store> stores =
      new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Store> eldest) {
          return size() > REMEMBERED;
        }
      };

  private record Store(double left, Instant at) {}

  Rates(@ConfigProperty(name = "provender.rate.perMinute") int perMinute) {
    this.perMinute = perMinute;
  }

  /** Whether one more request of this person, household or address is too much at this moment. */
  synchronized boolean isTooMuch(String whose, Instant now) {
    Store store = stores.getOrDefault(whose, new Store(perMinute, now));
    double filled = Duration.between(store.at(), now).toNanos() / NANOS_PER_MINUTE * perMinute;
    double left = Math.min(perMinute, store.left() + Math.max(0, filled));
    boolean tooMuch = left < 1;
    stores.put(whose, new Store(tooMuch ? left : left - 1, now));
    return tooMuch;
  }
}
