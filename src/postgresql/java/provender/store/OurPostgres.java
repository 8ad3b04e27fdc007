package provender.store;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.common.QuarkusTestResourceLifecycleManager;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A PostgreSQL of its own for the tests of this build; it starts by itself and is gone afterwards. */
@QuarkusTestResource(OurPostgres.class)
public final class OurPostgres implements QuarkusTestResourceLifecycleManager {
  private @Nullable EmbeddedPostgres server;

  @Override
  public Map<String, String> start() {
    try {
      server = EmbeddedPostgres.builder().start();
    } catch (IOException unstartable) {
      throw new UncheckedIOException(unstartable);
    }
    String url = server.getJdbcUrl("postgres", "postgres");
    return Map.of("quarkus.datasource.jdbc.url", url, "%test.quarkus.datasource.jdbc.url", url,
        "quarkus.datasource.username", "postgres", "quarkus.datasource.password", "postgres");
  }

  @Override
  public void stop() {
    try {
      if (server != null) {
        server.close();
      }
    } catch (IOException alreadyGone) {
      throw new UncheckedIOException(alreadyGone);
    }
  }
}
