package provender.web;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;

/** Gives a browser that takes Brotli the files of the app as the build packed them; others get them packed on the way, or as they are. */
@Singleton
class PackedFiles {
  private static final String BROTLI = "br";
  private static final Map<String, String> TYPES = Map.of(
      "", "text/html;charset=UTF-8",
      "js", "text/javascript;charset=UTF-8",
      "css", "text/css;charset=UTF-8",
      "json", "application/json",
      "webmanifest", "application/manifest+json",
      "svg", "image/svg+xml");

  private final Map<String, Buffer> packed = new HashMap<>();

  PackedFiles(HeldFiles held) throws IOException {
    for (String path : held.paths()) {
      String file = path.equals("/") ? "/index.html" : path;
      try (InputStream found = PackedFiles.class.getResourceAsStream("/META-INF/resources" + file + ".br")) {
        if (found != null) {
          packed.put(path, Buffer.buffer(found.readAllBytes()));
        }
      }
    }
  }

  /** After every look at the request, in place of the file as it is. */
  void register(@Observes Filters filters) {
    filters.register(this::answer, 100);
  }

  private void answer(RoutingContext context) {
    String path = context.normalizedPath();
    Buffer file = context.request().method() == HttpMethod.GET && takesBrotli(context) ? packed.get(path) : null;
    if (file == null) {
      context.next();
      return;
    }
    context.response()
        .putHeader("Content-Encoding", BROTLI)
        .putHeader("Content-Type", TYPES.get(path.substring(path.lastIndexOf('.') + 1).replace("/", "")))
        .putHeader("Vary", "Accept-Encoding")
        .end(file);
  }

  private static boolean takesBrotli(RoutingContext context) {
    return context.parsedHeaders().acceptEncoding().stream().anyMatch(one -> one.value().equals(BROTLI) && one.weight() > 0);
  }
}
