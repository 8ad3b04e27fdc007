package provender.lan;

import io.smallrye.config.ConfigSourceContext;
import io.smallrye.config.ConfigSourceFactory;
import io.smallrye.config.ConfigValue;
import io.smallrye.config.PropertiesConfigSource;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.config.spi.ConfigSource;

/** When names are wanted, has the certificate made and tells the HTTP server where it lies, before it opens its doors. */
public final class LanCertificateSource implements ConfigSourceFactory {
  public static final String NAMES = "provender.lan.names";

  private static final int BEFORE_DEFAULTS = 260;

  @Override
  public Iterable<ConfigSource> getConfigSources(ConfigSourceContext context) {
    ConfigValue names = context.getValue(NAMES);
    if (names == null || names.getValue() == null || names.getValue().isBlank()) {
      return List.of();
    }
    LanCertificate certificate = new LanCertificate(folder(context.getValue("provender.data")));
    certificate.prepare(LanAddress.read(names.getValue()), Instant.now());
    return List.of(
        new PropertiesConfigSource(
            Map.of(
                "quarkus.http.ssl.certificate.files", certificate.server().toString(),
                "quarkus.http.ssl.certificate.key-files", certificate.serverKey().toString()),
            "certificate for " + names.getValue(),
            BEFORE_DEFAULTS));
  }

  /** Where the certificates lie, beside the database. */
  public static Path folder(ConfigValue data) {
    return folder(data == null || data.getValue() == null ? "data" : data.getValue());
  }

  public static Path folder(String data) {
    return Path.of(data, "lan");
  }
}
