package provender.store;

import static org.assertj.core.api.Assertions.assertThat;

import io.smallrye.config.PropertiesConfigSource;
import io.smallrye.config.SmallRyeConfigBuilder;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DatabaseFileTest {
  @Test
  void a_whole_path_is_where_the_database_lies(@TempDir Path folder) {
    assertThat(databaseIn(folder.toString())).isEqualTo(folder.resolve("provender").toString());
  }

  @Test
  void any_other_counts_from_where_the_server_was_started() {
    assertThat(databaseIn("data")).isEqualTo(Path.of("").toAbsolutePath().resolve("data/provender").toString());
  }

  private static String databaseIn(String data) {
    return new SmallRyeConfigBuilder()
        .withSources(new PropertiesConfigSource(Map.of("provender.data", data), "given", 300))
        .withSources(new DatabaseFile())
        .build()
        .getRawValue(DatabaseFile.NAME);
  }
}
