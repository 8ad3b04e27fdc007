package provender.store;

import io.smallrye.config.ConfigSourceContext;
import io.smallrye.config.ConfigSourceFactory;
import io.smallrye.config.PropertiesConfigSource;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.config.spi.ConfigSource;

/**
 * Tells the embedded database by its whole path where it lies: H2 takes relative paths only when they begin with a dot, and
 * {@code provender.data} may name a folder either way.
 */
public final class DatabaseFile implements ConfigSourceFactory {
  static final String NAME = "provender.database";

  private static final int BEFORE_DEFAULTS = 260;

  @Override
  public Iterable<ConfigSource> getConfigSources(ConfigSourceContext context) {
    var data = context.getValue("provender.data");
    if (data == null || data.getValue() == null) return List.of();
    var file = Path.of(data.getValue(), "provender").toAbsolutePath().normalize();
    return List.of(new PropertiesConfigSource(Map.of(NAME, file.toString()), "database in " + data.getValue(), BEFORE_DEFAULTS));
  }
}
