package provender.lan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.cert.CertPath;
import java.security.cert.CertPathValidator;
import java.security.cert.CertPathValidatorException;
import java.security.cert.CertificateFactory;
import java.security.cert.PKIXParameters;
import java.security.cert.TrustAnchor;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.bouncycastle.asn1.x509.Extension;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import provender.lan.LanCertificate.Done;

class LanCertificateTest {
  private static final Instant NOW = Instant.parse("2026-11-25T12:00:00Z");
  private static final String NAMES = "tank.home.arpa, 192.168.1.20";

  @TempDir Path folder;

  @Test
  void a_phone_that_trusts_the_authority_believes_the_server_and_keys_are_for_their_owner_alone() throws Exception {
    assertThat(made(NAMES).prepare(LanAddress.read(NAMES), NOW)).isEqualTo(Done.NOTHING);
    PemFiles files = new PemFiles(folder);
    X509Certificate authority = files.certificate("ca.crt");
    X509Certificate server = files.certificate("server.crt");
    believe(authority, server, NOW);
    assertThat(server.getSubjectAlternativeNames()).extracting(one -> String.valueOf(one.get(1))).containsExactly("tank.home.arpa", "192.168.1.20");
    assertThat(server.getExtendedKeyUsage()).containsExactly("1.3.6.1.5.5.7.3.1");
    assertThat(authority.getBasicConstraints()).isZero();
    assertThat(authority.getCriticalExtensionOIDs()).contains(Extension.nameConstraints.getId());
    for (String key : List.of("ca.key", "server.key")) {
      assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve(key)))).isEqualTo("rw-------");
    }
    assertThat(openssl("server.crt")).isTrue();
  }

  @Test
  void a_stolen_authority_can_vouch_for_nothing_else() throws Exception {
    for (String names : List.of(NAMES, "tank.home.arpa", "192.168.1.20", "fd00:0:0:0:0:0:0:20")) {
      Authority authority = Authority.make(LanAddress.read(names), NOW);
      believe(authority.certificate(), authority.vouchFor(LanAddress.read(names), NOW).certificate(), NOW);
      for (String other : List.of("bank.example", "home.arpa", "192.168.1.21", "fd00:0:0:0:0:0:0:21")) {
        X509Certificate forged = authority.vouchFor(LanAddress.read(other), NOW).certificate();
        assertThatThrownBy(() -> believe(authority.certificate(), forged, NOW)).as(names + " for " + other)
            .isInstanceOf(CertPathValidatorException.class);
        PemFiles files = new PemFiles(folder);
        files.write("ca.crt", authority.certificate());
        files.write("forged.crt", forged);
        assertThat(hasOpenssl() && openssl("forged.crt")).as(names + " for " + other).isFalse();
      }
    }
  }

  @Test
  void the_server_s_certificate_is_renewed_in_time_while_the_phones_need_not_be_visited() throws Exception {
    LanCertificate certificate = made(NAMES);
    String fingerprint = certificate.fingerprint();
    Instant later = NOW.plus(Duration.ofDays(368));
    assertThat(certificate.prepare(LanAddress.read(NAMES), NOW.plus(Duration.ofDays(366)))).isEqualTo(Done.NOTHING);
    assertThat(certificate.prepare(LanAddress.read(NAMES), later)).isEqualTo(Done.RENEWED);
    assertThat(certificate.fingerprint()).isEqualTo(fingerprint).matches("([0-9A-F]{2}:){31}[0-9A-F]{2}");
    PemFiles files = new PemFiles(folder);
    believe(files.certificate("ca.crt"), files.certificate("server.crt"), later.plus(Duration.ofDays(300)));
  }

  @Test
  void other_names_or_a_lost_key_need_another_authority() throws IOException {
    LanCertificate certificate = made(NAMES);
    String fingerprint = certificate.fingerprint();
    assertThat(certificate.prepare(LanAddress.read("fish.home.arpa"), NOW)).isEqualTo(Done.MADE);
    assertThat(certificate.fingerprint()).isNotEqualTo(fingerprint);
    Files.delete(folder.resolve("ca.key"));
    assertThat(certificate.prepare(LanAddress.read("fish.home.arpa"), NOW)).isEqualTo(Done.MADE);
  }

  @Test
  void a_name_that_cannot_be_used_is_named_with_what_it_takes() {
    for (String wrong : List.of("", "Tank.home", "https://tank.home", "tank home", "tank..home", "300.1.1.1", "tank.home,,", "-tank", "10.0.0")) {
      assertThatThrownBy(() -> LanAddress.read(wrong)).as(wrong).isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("provender.lan.names takes host names");
    }
  }

  private LanCertificate made(String names) {
    LanCertificate certificate = new LanCertificate(folder);
    assertThat(certificate.prepare(LanAddress.read(names), NOW)).isEqualTo(Done.MADE);
    return certificate;
  }

  /** As a phone does (RFC 5280, section 6), which knows the authority's name and key and reads its constraints from its certificate. */
  private static void believe(X509Certificate authority, X509Certificate server, Instant at) throws GeneralSecurityException {
    TrustAnchor anchor = new TrustAnchor(authority.getSubjectX500Principal(), authority.getPublicKey(), null);
    PKIXParameters parameters = new PKIXParameters(Set.of(anchor));
    parameters.setRevocationEnabled(false);
    parameters.setDate(Date.from(at));
    CertPath path = CertificateFactory.getInstance("X.509").generateCertPath(List.of(server, authority));
    CertPathValidator.getInstance("PKIX").validate(path, parameters);
  }

  /** A second opinion where the machine has one; true where it has none. */
  private boolean openssl(String certificate) throws Exception {
    return !hasOpenssl()
        || run("openssl", "verify", "-x509_strict", "-attime", String.valueOf(NOW.getEpochSecond()), "-CAfile", folder.resolve("ca.crt").toString(),
            folder.resolve(certificate).toString());
  }

  private static boolean hasOpenssl() throws InterruptedException {
    try {
      return run("openssl", "version");
    } catch (IOException none) {
      return false;
    }
  }

  private static boolean run(String... command) throws IOException, InterruptedException {
    Process process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
    return process.waitFor(20, TimeUnit.SECONDS) && process.exitValue() == 0;
  }
}
