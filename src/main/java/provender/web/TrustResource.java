package provender.web;

import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.jboss.logging.Logger;
import provender.lan.LanAddress;
import provender.lan.LanCertificate;
import provender.lan.LanCertificateSource;

/** Hands out the authority of a house, so that phones may trust this server; a certificate is no secret. */
@Path("/api/v1/trust")
@Singleton
class TrustResource {
  private static final Logger LOG = Logger.getLogger("provender.web");

  private final List<String> names;
  private final LanCertificate certificate;
  private final int encryptedPort;
  private final int plainPort;

  TrustResource(
      @ConfigProperty(name = LanCertificateSource.NAMES) Optional<String> names,
      @ConfigProperty(name = "provender.data") String data,
      @ConfigProperty(name = "quarkus.http.ssl-port", defaultValue = "8443") int encryptedPort,
      @ConfigProperty(name = "quarkus.http.port") int plainPort) {
    this.names = names.map(LanAddress::read).orElse(List.of()).stream().map(LanAddress::written).toList();
    this.certificate = new LanCertificate(LanCertificateSource.folder(data));
    this.encryptedPort = encryptedPort;
    this.plainPort = plainPort;
  }

  void tellWhere(@Observes StartupEvent started) {
    if (!names.isEmpty()) {
      LOG.info("encrypted at https://" + names.get(0) + ":" + encryptedPort + "; phones learn to trust it at http://" + names.get(0) + ":" + plainPort
          + "/#/trust, where they must see this fingerprint: " + certificate.fingerprint());
    }
  }

  @GET
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(summary = "Whether this server has an authority of its own for a house, for which names, and its SHA-256 fingerprint")
  public Map<String, Object> offer() {
    return names.isEmpty()
        ? Map.of("offered", false)
        : Map.of("offered", true, "names", names, "fingerprint", certificate.fingerprint(), "port", encryptedPort);
  }

  @GET
  @Path("/ca.crt")
  @Produces("application/x-x509-ca-cert")
  @Operation(summary = "The certificate of that authority, for phones to trust; 404 when there is none")
  public Response authority() {
    if (names.isEmpty()) {
      throw Problem.notFound();
    }
    try {
      return Response.ok(Files.readAllBytes(certificate.authority()))
          .header("Content-Disposition", "attachment; filename=\"provender-ca.crt\"")
          .build();
    } catch (IOException gone) {
      throw new UncheckedIOException(gone);
    }
  }
}
