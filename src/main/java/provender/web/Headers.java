package provender.web;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.MultiMap;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** What every answer says about how it may be used, and the door for requests that another site made a browser send. */
@ApplicationScoped
class Headers {
  static final int MOST_BYTES = 1024 * 1024;
  private static final Set<HttpMethod> HARMLESS = Set.of(HttpMethod.GET, HttpMethod.HEAD, HttpMethod.OPTIONS);

  private static final String CONTENT_SECURITY =
      "default-src 'self'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:;"
          + " connect-src 'self'; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

  private final HeldFiles held;
  private final boolean https;

  Headers(HeldFiles held, @ConfigProperty(name = "provender.https") boolean https) {
    this.held = held;
    this.https = https;
  }

  void register(@Observes Filters filters) {
    filters.register(this::guard, 1000);
  }

  private void guard(RoutingContext context) {
    context.addHeadersEndHandler(done -> mark(context));
    if (!HARMLESS.contains(context.request().method()) && isFromElsewhere(context)) {
      Problem.fromOtherSite().answer(context);
      return;
    }
    if (mayBeTooLarge(context)) {
      Problem.tooLarge("a request holds at most 1 MiB and says its length").answer(context);
      return;
    }
    String tag = held.tag(context.normalizedPath());
    if (tag != null && tag.equals(context.request().getHeader("If-None-Match"))) {
      context.response().setStatusCode(304).end();
      return;
    }
    context.next();
  }

  /** Only a steward's import may be long; a body that does not say its length could be. */
  private static boolean mayBeTooLarge(RoutingContext context) {
    if (context.normalizedPath().endsWith("/import")) {
      return false;
    }
    String length = context.request().getHeader("Content-Length");
    if (length == null) {
      return context.request().getHeader("Transfer-Encoding") != null;
    }
    return length.length() > 7 || Long.parseLong(length) > MOST_BYTES;
  }

  private void mark(RoutingContext context) {
    MultiMap headers = context.response().headers();
    String path = context.normalizedPath();
    headers.set("Content-Security-Policy", CONTENT_SECURITY);
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("Referrer-Policy", "no-referrer");
    headers.set("Permissions-Policy", "camera=(), microphone=(), geolocation=()");
    headers.set("Cross-Origin-Opener-Policy", "same-origin");
    if (https) {
      headers.set("Strict-Transport-Security", "max-age=31536000; includeSubDomains");
    }
    String tag = held.tag(path);
    if (tag != null && context.response().getStatusCode() < 400) {
      headers.set("ETag", tag);
    }
    headers.set("Cache-Control", path.startsWith("/api/") ? "no-store" : "no-cache");
    if (path.endsWith(".webmanifest")) {
      headers.set("Content-Type", "application/manifest+json");
    }
  }

  private static boolean isFromElsewhere(RoutingContext context) {
    String site = context.request().getHeader("Sec-Fetch-Site");
    if (site != null) {
      return !site.equals("same-origin") && !site.equals("none");
    }
    String origin = context.request().getHeader("Origin");
    String host = context.request().getHeader("Host");
    return origin != null && !origin.equals("http://" + host) && !origin.equals("https://" + host);
  }
}
