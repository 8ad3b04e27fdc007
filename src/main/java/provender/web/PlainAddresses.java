package provender.web;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;

/** No id has U+0000 in it, and PostgreSQL would not even look for one: such an address leads nowhere. */
@Singleton
class PlainAddresses {
  private static final String NO_CHARACTER = "%00";

  /** Before anything reads what stands in the address. */
  void register(@Observes Filters filters) {
    filters.register(PlainAddresses::check, 890);
  }

  private static void check(RoutingContext context) {
    if (!context.normalizedPath().contains(NO_CHARACTER)) {
      context.next();
      return;
    }
    context
        .response()
        .setStatusCode(404)
        .putHeader("Content-Type", Problem.MEDIA_TYPE)
        .end("{\"type\":\"about:blank\",\"kind\":\"unknown\",\"title\":\"nothing is known under this address\",\"status\":404,\"errors\":[]}");
  }
}
