package provender.web;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import java.util.List;

/**
 * Addresses that lead nowhere here, though a library further in might find something under them. No id has U+0000 in it, and
 * PostgreSQL would not even look for one. What follows a semicolon (a matrix parameter, RFC 3986 section 3.3) is not looked at
 * when a resource is chosen, so with one an address would not read as what it leads to, neither for the limits on how often
 * one may ask nor for the audit log.
 */
@Singleton
class PlainAddresses {
  private static final List<String> STRANGE = List.of("%00", ";", "%3B");

  /** Before anything reads what stands in the address. */
  void register(@Observes Filters filters) {
    filters.register(PlainAddresses::check, 890);
  }

  private static void check(RoutingContext context) {
    String path = context.normalizedPath();
    if (STRANGE.stream().anyMatch(path::contains)) {
      Problem.notFound().answer(context);
    } else {
      context.next();
    }
  }
}
