package provender.lan;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PrivateKey;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.security.spec.PKCS8EncodedKeySpec;
import java.util.Base64;
import java.util.EnumSet;

/** Certificates and keys as text files (RFC 7468); a key is readable by its owner alone from the moment it is there. */
final class PemFiles {
  private static final String OWNER_ONLY = "rw-------";
  private static final String CERTIFICATE = "CERTIFICATE";
  private static final String KEY = "PRIVATE KEY";

  private final Path folder;

  PemFiles(Path folder) {
    this.folder = folder;
  }

  boolean has(String name) {
    return Files.exists(folder.resolve(name));
  }

  void write(String name, X509Certificate certificate) {
    try {
      replace(name, text(CERTIFICATE, certificate.getEncoded()));
    } catch (GeneralSecurityException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  void write(String name, PrivateKey key) {
    replace(name, text(KEY, key.getEncoded()), ownerOnly());
  }

  X509Certificate certificate(String name) {
    try (var in = Files.newInputStream(folder.resolve(name))) {
      return (X509Certificate) CertificateFactory.getInstance("X.509").generateCertificate(in);
    } catch (IOException | GeneralSecurityException unreadable) {
      throw unreadable(name, unreadable);
    }
  }

  PrivateKey key(String name) {
    try {
      String body = Files.readString(folder.resolve(name)).replaceAll("-----[A-Z ]+-----|\\s", "");
      return KeyFactory.getInstance("EC").generatePrivate(new PKCS8EncodedKeySpec(Base64.getDecoder().decode(body)));
    } catch (IOException | GeneralSecurityException | IllegalArgumentException unreadable) {
      throw unreadable(name, unreadable);
    }
  }

  private void replace(String name, String text, FileAttribute<?>... attributes) {
    Path file = folder.resolve(name);
    try {
      Files.createDirectories(folder);
      Files.deleteIfExists(file);
      EnumSet<StandardOpenOption> anew = EnumSet.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
      try (SeekableByteChannel out = Files.newByteChannel(file, anew, attributes)) {
        out.write(ByteBuffer.wrap(text.getBytes(StandardCharsets.US_ASCII)));
      }
    } catch (IOException full) {
      throw new UncheckedIOException("cannot write " + file, full);
    }
  }

  private static FileAttribute<?>[] ownerOnly() {
    boolean hasModes = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
    return hasModes
        ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(OWNER_ONLY))}
        : new FileAttribute<?>[0];
  }

  private static String text(String kind, byte[] bytes) {
    String body = Base64.getMimeEncoder(64, new byte[] {'\n'}).encodeToString(bytes);
    return "-----BEGIN " + kind + "-----\n" + body + "\n-----END " + kind + "-----\n";
  }

  private IllegalStateException unreadable(String name, Exception cause) {
    return new IllegalStateException(
        folder.resolve(name) + " cannot be read; remove the folder to make everything anew, and have the phones trust the new authority", cause);
  }
}
