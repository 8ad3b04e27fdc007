package provender.store;

import io.quarkus.test.common.QuarkusTestResourceLifecycleManager;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A real PostgreSQL for one run, whose app may do no more than own its tables: a superuser would see over every fence. */
public final class EmbeddedPostgresql implements QuarkusTestResourceLifecycleManager {
  private @Nullable EmbeddedPostgres server;

  @Override
  public Map<String, String> start() {
    try {
      EmbeddedPostgres started = EmbeddedPostgres.start();
      server = started;
      try (Connection superuser = started.getPostgresDatabase().getConnection(); Statement statement = superuser.createStatement()) {
        statement.execute("create role provender login password 'for-this-run' nosuperuser nobypassrls");
        statement.execute("create database provender owner provender");
      }
      return Map.of(
          "quarkus.datasource.jdbc.url", started.getJdbcUrl("provender", "provender"),
          "quarkus.datasource.username", "provender",
          "quarkus.datasource.password", "for-this-run");
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    } catch (SQLException broken) {
      throw new IllegalStateException(broken);
    }
  }

  @Override
  public void stop() {
    try {
      Objects.requireNonNull(server).close();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
