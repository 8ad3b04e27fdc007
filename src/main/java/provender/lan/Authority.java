package provender.lan;

import java.io.IOException;
import java.math.BigInteger;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.SecureRandom;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import javax.security.auth.x500.X500Principal;
import org.bouncycastle.asn1.DEROctetString;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.GeneralSubtree;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.asn1.x509.NameConstraints;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509ExtensionUtils;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/** A certificate authority for a few addresses: its certificate and key, and what it vouches for. */
record Authority(X509Certificate certificate, PrivateKey key) {
  /** Long, since each phone has to be visited for another one. */
  static final Duration LASTS = Duration.ofDays(3650);

  /** Phones refuse certificates of more than 825 days, also from an authority of one's own; from memory. */
  static final Duration SERVER_LASTS = Duration.ofDays(397);

  /** Never a name of anything (RFC 6761, 6.4). */
  private static final String NO_NAME = "invalid";

  private static final Duration CLOCKS_DIFFER = Duration.ofHours(24);
  private static final int SERIAL_BITS = 120;
  private static final SecureRandom RANDOM = new SecureRandom();

  /** Something to show with the key that belongs to it. */
  record Issued(X509Certificate certificate, PrivateKey key) {}

  static Authority make(List<LanAddress> addresses, Instant now) {
    try {
      KeyPair pair = pair();
      X500Principal name = new X500Principal("CN=Provender at " + addresses.get(0).written());
      JcaX509v3CertificateBuilder builder = builder(name, name, pair.getPublic(), now, LASTS);
      builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(0));
      builder.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.keyCertSign | KeyUsage.cRLSign));
      builder.addExtension(Extension.nameConstraints, true, onlyFor(addresses));
      builder.addExtension(Extension.subjectKeyIdentifier, false, new JcaX509ExtensionUtils().createSubjectKeyIdentifier(pair.getPublic()));
      return new Authority(signed(builder, pair.getPrivate()), pair.getPrivate());
    } catch (IOException | GeneralSecurityException | OperatorCreationException impossible) {
      throw new IllegalStateException("every Java can sign with an elliptic curve", impossible);
    }
  }

  Issued vouchFor(List<LanAddress> addresses, Instant now) {
    try {
      KeyPair pair = pair();
      X500Principal subject = new X500Principal("CN=" + addresses.get(0).written());
      JcaX509v3CertificateBuilder builder = builder(certificate.getSubjectX500Principal(), subject, pair.getPublic(), now, SERVER_LASTS);
      GeneralName[] names = addresses.stream().map(LanAddress::inCertificate).toArray(GeneralName[]::new);
      builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(false));
      builder.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.digitalSignature));
      builder.addExtension(Extension.extendedKeyUsage, false, new ExtendedKeyUsage(KeyPurposeId.id_kp_serverAuth));
      builder.addExtension(Extension.subjectAlternativeName, false, new GeneralNames(names));
      builder.addExtension(Extension.authorityKeyIdentifier, false, new JcaX509ExtensionUtils().createAuthorityKeyIdentifier(certificate));
      return new Issued(signed(builder, key), pair.getPrivate());
    } catch (IOException | GeneralSecurityException | OperatorCreationException impossible) {
      throw new IllegalStateException("every Java can sign with an elliptic curve", impossible);
    }
  }

  /**
   * A kind of address that no address here is of is shut out whole, since a constraint binds only its own kind. For names an
   * empty exclusion would do (RFC 5280, 4.2.1.10), but not every reader takes it so; a permitted name that cannot be does the same.
   */
  private static NameConstraints onlyFor(List<LanAddress> addresses) {
    List<GeneralSubtree> permitted = new ArrayList<>();
    addresses.forEach(one -> permitted.add(new GeneralSubtree(one.inConstraint())));
    List<GeneralSubtree> excluded = new ArrayList<>();
    if (addresses.stream().noneMatch(LanAddress::isNumber)) {
      excluded.add(new GeneralSubtree(new GeneralName(GeneralName.iPAddress, new DEROctetString(new byte[8]))));
      excluded.add(new GeneralSubtree(new GeneralName(GeneralName.iPAddress, new DEROctetString(new byte[32]))));
    }
    if (addresses.stream().allMatch(LanAddress::isNumber)) {
      permitted.add(new GeneralSubtree(new GeneralName(GeneralName.dNSName, NO_NAME)));
    }
    return new NameConstraints(permitted.toArray(GeneralSubtree[]::new), excluded.toArray(GeneralSubtree[]::new));
  }

  private static JcaX509v3CertificateBuilder builder(X500Principal issuer, X500Principal subject, PublicKey key, Instant now, Duration lasts) {
    BigInteger serial = new BigInteger(SERIAL_BITS, RANDOM).setBit(SERIAL_BITS);
    return new JcaX509v3CertificateBuilder(issuer, serial, Date.from(now.minus(CLOCKS_DIFFER)), Date.from(now.plus(lasts)), subject, key);
  }

  private static X509Certificate signed(JcaX509v3CertificateBuilder builder, PrivateKey key)
      throws OperatorCreationException, GeneralSecurityException {
    return new JcaX509CertificateConverter().getCertificate(builder.build(new JcaContentSignerBuilder("SHA256withECDSA").build(key)));
  }

  private static KeyPair pair() throws GeneralSecurityException {
    KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
    generator.initialize(new ECGenParameterSpec("secp256r1"));
    return generator.generateKeyPair();
  }
}
