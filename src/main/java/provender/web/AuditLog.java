package provender.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.jboss.logging.Logger;

/**
 * One line of JSON for whatever bears on safety: every refusal, every change among people and their ways in, every journal
 * carried away, every picture erased. What is recorded at a tank stands in its journal and not here, and a calculation needs
 * nobody. No line holds a password, a token, a code or what an entry says.
 */
@ApplicationScoped
class AuditLog {
  /** Where a request keeps the id of who is asking, once that is known. */
  static final String KEEPER = "provender.keeper";

  private static final Logger LOG = Logger.getLogger("provender.audit");
  private static final Set<HttpMethod> HARMLESS = Set.of(HttpMethod.GET, HttpMethod.HEAD, HttpMethod.OPTIONS);
  private static final int LONGEST_PATH = 200;

  private final ObjectMapper json = new ObjectMapper();

  /** Before all other filters, so that it also sees what they turn away. */
  void register(@Observes Filters filters) {
    filters.register(this::watch, 2000);
  }

  private void watch(RoutingContext context) {
    // Before the answer goes out: whoever has it may count on its being logged.
    context.addHeadersEndHandler(done -> note(context));
    context.next();
  }

  private void note(RoutingContext context) {
    int status = context.response().getStatusCode();
    boolean refused = status >= 400;
    String path = context.normalizedPath();
    boolean watched = path.startsWith("/api/") && !path.startsWith("/api/v1/calc/");
    if (watched && (refused || changesPeople(context) || carriesAway(context))) {
      LOG.info(line(context, status, refused));
    }
  }

  private static boolean changesPeople(RoutingContext context) {
    String path = context.normalizedPath();
    boolean recorded = path.endsWith("/entries") || (path.contains("/photos/") && context.request().method() == HttpMethod.PUT);
    return !HARMLESS.contains(context.request().method()) && !recorded;
  }

  private static boolean carriesAway(RoutingContext context) {
    return context.normalizedPath().contains("/export");
  }

  private String line(RoutingContext context, int status, boolean refused) {
    Map<String, Object> event = new LinkedHashMap<>();
    String path = context.normalizedPath();
    event.put("at", Instant.now().toString());
    event.put("outcome", refused ? "refused" : "done");
    event.put("method", context.request().method().name());
    event.put("path", path.length() > LONGEST_PATH ? path.substring(0, LONGEST_PATH) : path);
    event.put("status", status);
    event.put("keeper", context.get(KEEPER));
    event.put("address", Rates.address(context));
    try {
      return json.writeValueAsString(event);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("texts and numbers can be written", impossible);
    }
  }
}
