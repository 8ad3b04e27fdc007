package provender.web;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.github.bucket4j.Bucket;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * How often one address, one person and one household may ask in a minute. Each has a bucket that fills evenly, so a phone
 * that comes back after a month offline sends all it has, and one that has gone wild waits without keeping anyone else out.
 */
@ApplicationScoped
class Rates {
  private static final Duration MINUTE = Duration.ofMinutes(1);
  private static final int REMEMBERED = 100_000;

  private final long address;
  private final long person;
  private final long household;
  private final Cache<String, Bucket> buckets =
      Caffeine.newBuilder().maximumSize(REMEMBERED).expireAfterAccess(MINUTE.multipliedBy(2)).build();

  Rates(
      @ConfigProperty(name = "provender.rates.address") long address,
      @ConfigProperty(name = "provender.rates.person") long person,
      @ConfigProperty(name = "provender.rates.household") long household) {
    this.address = address;
    this.person = person;
    this.household = household;
  }

  /** After the look at where a request comes from, before anything costs work. */
  void register(@Observes Filters filters) {
    filters.register(this::guard, 900);
  }

  private void guard(RoutingContext context) {
    long seconds = context.normalizedPath().startsWith("/api/") ? secondsToWait("address " + address(context), address) : 0;
    if (seconds == 0) {
      context.next();
      return;
    }
    Problem.tooMany("too many requests from this address", seconds).answer(context);
  }

  /** Lets a person ask once more, or refuses. */
  void person(String id) {
    take("person " + id, person, "too many requests by this person");
  }

  /** Lets a household be asked about once more, or refuses. */
  void household(String id) {
    take("household " + id, household, "too many requests for this household");
  }

  private void take(String who, long perMinute, String title) {
    long seconds = secondsToWait(who, perMinute);
    if (seconds > 0) {
      throw Problem.tooMany(title, seconds);
    }
  }

  private long secondsToWait(String who, long perMinute) {
    Bucket bucket = buckets.get(who, name -> filled(perMinute));
    long nanos = bucket.tryConsumeAndReturnRemaining(1).getNanosToWaitForRefill();
    return nanos == 0 ? 0 : TimeUnit.NANOSECONDS.toSeconds(nanos) + 1;
  }

  private static Bucket filled(long perMinute) {
    return Bucket.builder().addLimit(limit -> limit.capacity(perMinute).refillGreedy(perMinute, MINUTE)).build();
  }

  /** The address at the other end of the line, or what a proxy says that is named as trusted in the settings. */
  static String address(RoutingContext context) {
    return context.request().remoteAddress() == null ? "" : context.request().remoteAddress().hostAddress();
  }
}
