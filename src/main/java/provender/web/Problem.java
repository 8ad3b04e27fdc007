package provender.web;

import io.vertx.core.http.HttpServerResponse;
import io.vertx.core.json.JsonObject;
import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.core.Response;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A refusal as RFC 9457 writes it, with a word for its kind that programs can go by, each bad field and what it takes. */
final class Problem extends RuntimeException {
  static final String MEDIA_TYPE = "application/problem+json";

  private final int status;
  private final String kind;
  private final String title;
  private final List<?> errors;
  private final long retryAfterSeconds;

  private Problem(int status, String kind, String title, List<?> errors) {
    this(status, kind, title, errors, 0);
  }

  /** @param retryAfterSeconds nothing where waiting would not help */
  private Problem(int status, String kind, String title, List<?> errors, long retryAfterSeconds) {
    super(title, null, false, false);
    this.status = status;
    this.kind = kind;
    this.title = title;
    this.errors = errors;
    this.retryAfterSeconds = retryAfterSeconds;
  }

  static Problem badRequest(String title, String field, String takes) {
    return new Problem(400, "bad-fields", title, List.of(Map.of("field", field, "takes", takes)));
  }

  static Problem badFields(List<?> errors) {
    return new Problem(400, "bad-fields", "some fields cannot be used", errors);
  }

  static Problem signInNeeded() {
    return new Problem(401, "sign-in", "sign in first", List.of());
  }

  /** @param kind guest or steward-only: who signs in anew as the same keeper gets the same answer */
  static Problem notAllowed(String kind, String title) {
    return new Problem(403, kind, title, List.of());
  }

  static Problem notFound() {
    return new Problem(404, "unknown", "nothing is known under this address", List.of());
  }

  /** What was asked goes against how things stand, and would go through if they stood otherwise. */
  static Problem conflict(String kind, String title) {
    return new Problem(409, kind, title, List.of());
  }

  /** What was sent had its place here, and that is closed for good. */
  static Problem gone(String kind, String title) {
    return new Problem(410, kind, title, List.of());
  }

  static Problem tooLarge(String title) {
    return new Problem(413, "too-large", title, List.of());
  }

  /** Unsupported media type (RFC 9110, 15.5.16), which the packing belongs to. */
  static Problem otherCoding() {
    return new Problem(415, "other-coding", "this is packed in a way that is not read here", List.of(Map.of("field", "Content-Encoding", "takes", "gzip or nothing")));
  }

  static Problem tooMany(String title, long seconds) {
    return new Problem(429, "too-many", title, List.of(), seconds);
  }

  /** The app on the phone is of a version this server no longer understands. */
  static Problem appTooOld(String title) {
    return new Problem(426, "app-too-old", title, List.of());
  }

  /** Locked (RFC 4918): about this journal alone, so that others go on meanwhile. */
  static Problem damaged() {
    return new Problem(423, "journal-damaged", "this journal is damaged on the server and not served; what is on the phone stays there", List.of());
  }

  /** Browsers make passkeys for names, not for bare numbers. */
  static Problem needsName() {
    return new Problem(409, "needs-name", "passkeys need an address with a name, such as https://tank.example, instead of a number", List.of());
  }

  static Problem fromOtherSite() {
    return new Problem(403, "other-site", "sent from another site", List.of());
  }

  static Problem of(int status, String title) {
    return new Problem(status, "other", title, List.of());
  }

  Map<String, Object> body() {
    Map<String, Object> body = new LinkedHashMap<>();
    body.put("type", "about:blank");
    body.put("kind", kind);
    body.put("title", title);
    body.put("status", status);
    body.put("errors", errors);
    return body;
  }

  Response response() {
    Response.ResponseBuilder response = Response.status(status).type(MEDIA_TYPE).entity(body());
    return retryAfterSeconds == 0 ? response.build() : response.header("Retry-After", retryAfterSeconds).build();
  }

  /** Answers a request that is refused at the door, before there is a resource to do it. */
  void answer(RoutingContext refused) {
    HttpServerResponse response = refused.response().setStatusCode(status).putHeader("Content-Type", MEDIA_TYPE);
    if (retryAfterSeconds > 0) {
      response.putHeader("Retry-After", Long.toString(retryAfterSeconds));
    }
    response.end(new JsonObject(body()).encode());
  }
}
