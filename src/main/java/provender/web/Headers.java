package provender.web;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.MultiMap;
import io.vertx.core.http.Cookie;
import io.vertx.core.http.HttpMethod;
import io.vertx.core.net.SocketAddress;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
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
  private final Rates rates;

  Headers(@ConfigProperty(name = "provender.https") boolean https, Rates rates) {
    this.https = https;
    this.rates = rates;
  }

  void register(@Observes Filters filters) {
    filters.register(this::guard, 1000);
  }

  private void guard(RoutingContext context) {
    context.addHeadersEndHandler(done -> mark(context));
    if (!HARMLESS.contains(context.request().method()) && isFromElsewhere(context)) {
      Turned.OTHER_SITE.away(context);
      return;
    }
    if (mayBeTooLarge(context)) {
      Turned.TOO_LARGE.away(context);
      return;
    }
    if (context.normalizedPath().startsWith("/api/") && asksTooMuch(context)) {
      Turned.TOO_MANY.away(context);
      return;
    }
    context.next();
  }

  /** What comes from this machine is a proxy's or its owner's; the person behind it is counted all the same. */
  private boolean asksTooMuch(RoutingContext context) {
    Instant now = Instant.now();
    SocketAddress address = context.request().remoteAddress();
    String from = address == null ? "" : address.hostAddress();
    boolean near = from.startsWith("127.") || from.equals("::1") || from.equals("0:0:0:0:0:0:0:1");
    Cookie session = context.request().getCookie(https ? Signed.COOKIE_OVER_HTTPS : Signed.COOKIE);
    boolean person = session != null && rates.isTooMuch("person " + session.getValue(), now);
    return person || (!near && rates.isTooMuch("address " + from, now));
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
