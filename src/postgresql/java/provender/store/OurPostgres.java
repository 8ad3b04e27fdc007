package provender.store;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.common.QuarkusTestResourceLifecycleManager;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A PostgreSQL of its own for the tests of this build; it starts by itself and is gone afterwards. The app may do no more there
 * than own its tables: a superuser would see over the fence between households.
 */
@QuarkusTestResource(OurPostgres.class)
public final class OurPostgres implements QuarkusTestResourceLifecycleManager {
  private @Nullable EmbeddedPostgres server;

  @Override
  public Map<String, String> start() {
    try {
      // As PostgreSQL comes: the library would have it answer before anything is safe.
      EmbeddedPostgres started = EmbeddedPostgres.builder()
          .setServerConfig("fsync", "on").setServerConfig("full_page_writes", "on").setServerConfig("synchronous_commit", "on").start();
      server = started;
      try (Connection superuser = started.getPostgresDatabase().getConnection(); Statement statement = superuser.createStatement()) {
        statement.execute("create role provender login password 'for-this-run' nosuperuser nobypassrls");
        statement.execute("create database provender owner provender");
      }
      String url = started.getJdbcUrl("provender", "provender");
      return Map.of("quarkus.datasource.jdbc.url", url, "%test.quarkus.datasource.jdbc.url", url,
          "quarkus.datasource.username", "provender", "quarkus.datasource.password", "for-this-run");
    } catch (IOException unstartable) {
      throw new UncheckedIOException(unstartable);
    } catch (SQLException refused) {
      throw new IllegalStateException(refused);
    }
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
