package provender.web;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.MultiMap;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** What every answer says about how it may be used, and the door for requests that another site made a browser send. */
@ApplicationScoped
class Headers {
  private static final Pattern IMPORT_MAP =
      Pattern.compile("<script type=\"importmap\">(.*?)</script>", Pattern.DOTALL);
  private static final long MOST_BYTES = 1024 * 1024;
  private static final Set<HttpMethod> HARMLESS = Set.of(HttpMethod.GET, HttpMethod.HEAD, HttpMethod.OPTIONS);

  private final String contentSecurity =
      "default-src 'self'; script-src 'self' '" + importMapHash() + "'; style-src 'self'; img-src 'self' data: blob:;"
          + " connect-src 'self'; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

  private final boolean https;

  Headers(@ConfigProperty(name = "provender.https") boolean https) {
    this.https = https;
  }

  void register(@Observes Filters filters) {
    filters.register(this::guard, 1000);
  }

  private void guard(RoutingContext context) {
    context.addHeadersEndHandler(done -> mark(context));
    if (!HARMLESS.contains(context.request().method()) && isFromElsewhere(context)) {
      context
          .response()
          .setStatusCode(403)
          .putHeader("Content-Type", Problem.MEDIA_TYPE)
          .end("{\"type\":\"about:blank\",\"kind\":\"other-site\",\"title\":\"sent from another site\",\"status\":403,\"errors\":[]}");
      return;
    }
    if (mayBeTooLarge(context)) {
      context
          .response()
          .setStatusCode(413)
          .putHeader("Content-Type", Problem.MEDIA_TYPE)
          .end("{\"type\":\"about:blank\",\"kind\":\"too-large\",\"title\":\"a request holds at most 1 MiB and says its length\",\"status\":413,\"errors\":[]}");
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
    headers.set("Content-Security-Policy", contentSecurity);
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("Referrer-Policy", "no-referrer");
    headers.set("Permissions-Policy", "camera=(), microphone=(), geolocation=()");
    headers.set("Cross-Origin-Opener-Policy", "same-origin");
    if (https) {
      headers.set("Strict-Transport-Security", "max-age=31536000; includeSubDomains");
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

  private static String importMapHash() {
    try (InputStream page = Headers.class.getResourceAsStream("/META-INF/resources/index.html")) {
      if (page == null) {
        throw new IllegalStateException("the app's first page is missing");
      }
      Matcher map = IMPORT_MAP.matcher(new String(page.readAllBytes(), StandardCharsets.UTF_8));
      if (!map.find()) {
        throw new IllegalStateException("the app's first page has no import map");
      }
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(map.group(1).getBytes(StandardCharsets.UTF_8));
      return "sha256-" + Base64.getEncoder().encodeToString(digest);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }
}
