package provender;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.ConnectException;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.security.cert.CertificateFactory;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLHandshakeException;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.Test;

/** The packaged server with an authority of its own, as a house would run it. */
class LanIT {

  @Test
  void who_trusts_the_authority_reaches_the_server_encrypted_and_nobody_else_does() throws Exception {
    int port = freePort();
    try (RunningServer server = RunningServer.fresh("lan", "-Dprovender.lan.names=localhost,127.0.0.1", "-Dquarkus.http.ssl-port=" + port)) {
      byte[] authority = HttpClient.newHttpClient()
          .send(HttpRequest.newBuilder(URI.create(server.url() + "/api/v1/trust/ca.crt")).build(), BodyHandlers.ofByteArray()).body();
      assertThat(authority).isEqualTo(Files.readAllBytes(server.data().resolve("lan").resolve("ca.crt")));
      HttpRequest question = HttpRequest.newBuilder(URI.create("https://localhost:" + port + "/api/v1/trust")).build();
      ObjectMapper json = new ObjectMapper();
      opens(port);
      String said = trusting(authority).send(question, BodyHandlers.ofString()).body();
      assertThat(said).contains("\"offered\":true", "127.0.0.1", "localhost", "\"port\":" + port);
      assertThatThrownBy(() -> HttpClient.newHttpClient().send(question, BodyHandlers.ofString())).isInstanceOf(SSLHandshakeException.class);

      server.kill();
      try (RunningServer again = server.again("-Dprovender.lan.names=localhost,127.0.0.1", "-Dquarkus.http.ssl-port=" + port)) {
        assertThat(Files.readAllBytes(again.data().resolve("lan").resolve("ca.crt"))).isEqualTo(authority);
        opens(port);
        assertThat(trusting(authority).send(question, BodyHandlers.ofString()).body()).satisfies(told -> assertThat(json.readTree(told)).isEqualTo(json.readTree(said)));
      }
    }
  }

  /** The encrypted door opens a moment after the plain one. */
  private static void opens(int port) throws Exception {
    for (int tries = 0; tries < 100; tries++) {
      try (Socket door = new Socket("localhost", port)) {
        return;
      } catch (ConnectException notYet) {
        Thread.sleep(100);
      }
    }
  }

  private static HttpClient trusting(byte[] authority) throws Exception {
    Certificate certificate = CertificateFactory.getInstance("X.509").generateCertificate(new ByteArrayInputStream(authority));
    KeyStore store = KeyStore.getInstance(KeyStore.getDefaultType());
    store.load(null, null);
    store.setCertificateEntry("house", certificate);
    TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
    trust.init(store);
    SSLContext context = SSLContext.getInstance("TLS");
    context.init(null, trust.getTrustManagers(), null);
    return HttpClient.newBuilder().sslContext(context).build();
  }

  private static int freePort() throws IOException {
    try (ServerSocket free = new ServerSocket(0)) {
      return free.getLocalPort();
    }
  }
}
