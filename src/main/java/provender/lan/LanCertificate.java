package provender.lan;

import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.cert.CertificateParsingException;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The files that make a server trusted inside a house: made when they are missing, renewed before they run out. */
public final class LanCertificate {
  public static final String AUTHORITY = "ca.crt";
  static final String AUTHORITY_KEY = "ca.key";
  static final String SERVER = "server.crt";
  static final String SERVER_KEY = "server.key";

  private static final Duration RENEWED_BEFORE = Duration.ofDays(30);

  private final Path folder;
  private final PemFiles files;

  public LanCertificate(Path folder) {
    this.folder = folder;
    this.files = new PemFiles(folder);
  }

  /** What had to be done. */
  public enum Done {
    NOTHING,
    RENEWED,
    /** Each phone has to be told of the new authority. */
    MADE
  }

  public Path authority() {
    return folder.resolve(AUTHORITY);
  }

  public Path server() {
    return folder.resolve(SERVER);
  }

  public Path serverKey() {
    return folder.resolve(SERVER_KEY);
  }

  public Done prepare(List<LanAddress> addresses, Instant now) {
    boolean whole = files.has(AUTHORITY) && files.has(AUTHORITY_KEY) && files.has(SERVER) && files.has(SERVER_KEY);
    if (!whole || !isFor(addresses) || runsOut(files.certificate(AUTHORITY), now)) {
      Authority authority = Authority.make(addresses, now);
      files.write(AUTHORITY_KEY, authority.key());
      files.write(AUTHORITY, authority.certificate());
      issue(authority, addresses, now);
      return Done.MADE;
    }
    if (runsOut(files.certificate(SERVER), now)) {
      issue(new Authority(files.certificate(AUTHORITY), files.key(AUTHORITY_KEY)), addresses, now);
      return Done.RENEWED;
    }
    return Done.NOTHING;
  }

  /** The authority's SHA-256, as phones show it: whoever installs it can compare. */
  public String fingerprint() {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(files.certificate(AUTHORITY).getEncoded());
      return HexFormat.ofDelimiter(":").withUpperCase().formatHex(digest);
    } catch (GeneralSecurityException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }

  private void issue(Authority authority, List<LanAddress> addresses, Instant now) {
    Authority.Issued issued = authority.vouchFor(addresses, now);
    files.write(SERVER_KEY, issued.key());
    files.write(SERVER, issued.certificate());
  }

  private boolean isFor(List<LanAddress> addresses) {
    try {
      Collection<List<?>> names = files.certificate(SERVER).getSubjectAlternativeNames();
      Set<String> held = names.stream().map(one -> String.valueOf(one.get(1))).collect(Collectors.toSet());
      return held.equals(addresses.stream().map(LanAddress::written).collect(Collectors.toSet()));
    } catch (CertificateParsingException unreadable) {
      throw new IllegalStateException(unreadable);
    }
  }

  private static boolean runsOut(X509Certificate certificate, Instant now) {
    return certificate.getNotAfter().toInstant().isBefore(now.plus(RENEWED_BEFORE));
  }
}
