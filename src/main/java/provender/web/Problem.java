package provender.web;

import jakarta.ws.rs.core.Response;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A refusal as RFC 9457 writes it, with each bad field and what it takes. */
final class Problem extends RuntimeException {
  static final String MEDIA_TYPE = "application/problem+json";

  private final int status;
  private final String title;
  private final List<?> errors;

  private Problem(int status, String title, List<?> errors) {
    super(title, null, false, false);
    this.status = status;
    this.title = title;
    this.errors = errors;
  }

  static Problem badRequest(String title, String field, String takes) {
    return new Problem(400, title, List.of(Map.of("field", field, "takes", takes)));
  }

  static Problem badFields(List<?> errors) {
    return new Problem(400, "some fields cannot be used", errors);
  }

  static Problem signInNeeded() {
    return new Problem(401, "sign in first", List.of());
  }

  static Problem notAllowed(String title) {
    return new Problem(403, title, List.of());
  }

  static Problem notFound() {
    return new Problem(404, "nothing is known under this address", List.of());
  }

  static Problem tooLarge(String title) {
    return new Problem(413, title, List.of());
  }

  static Problem tooMany(String title) {
    return new Problem(429, title, List.of());
  }

  static Problem of(int status, String title) {
    return new Problem(status, title, List.of());
  }

  Map<String, Object> body() {
    Map<String, Object> body = new LinkedHashMap<>();
    body.put("type", "about:blank");
    body.put("title", title);
    body.put("status", status);
    body.put("errors", errors);
    return body;
  }

  Response response() {
    return Response.status(status).type(MEDIA_TYPE).entity(body()).build();
  }
}
