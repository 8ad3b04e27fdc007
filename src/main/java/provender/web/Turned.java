package provender.web;

import io.vertx.ext.web.RoutingContext;

/** Turns a request away at the door, before anything has read it. */
enum Turned {
  OTHER_SITE(403, "other-site", "sent from another site"),
  TOO_LARGE(413, "too-large", "a request holds at most 1 MiB and says its length"),
  TOO_MANY(429, "too-many", "too many requests within a minute; wait a little");

  private static final int SECONDS_TO_WAIT = 5;

  private final int status;
  private final String kind;
  private final String title;

  Turned(int status, String kind, String title) {
    this.status = status;
    this.kind = kind;
    this.title = title;
  }

  void away(RoutingContext context) {
    Audit.note("turned-away", "kind", kind, "path", context.normalizedPath());
    if (this == TOO_MANY) {
      context.response().putHeader("Retry-After", String.valueOf(SECONDS_TO_WAIT));
    }
    context
        .response()
        .setStatusCode(status)
        .putHeader("Content-Type", Problem.MEDIA_TYPE)
        .end("{\"type\":\"about:blank\",\"kind\":\"" + kind + "\",\"title\":\"" + title + "\",\"status\":" + status + ",\"errors\":[]}");
  }
}
