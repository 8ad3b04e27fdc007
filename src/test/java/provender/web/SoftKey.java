package provender.web;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.MessageDigest;
import java.security.Signature;
import java.security.interfaces.ECPublicKey;
import java.security.spec.ECGenParameterSpec;
import java.util.Arrays;
import java.util.Base64;
import java.util.Map;
import java.util.UUID;

/** A passkey outside of any phone, which speaks as Web Authentication (W3C, level 2, sections 6.1 and 6.5) says, and may lie. */
final class SoftKey {
  static final int OWNER_ASKED = 0x05;
  static final int ONLY_TOUCHED = 0x01;

  private static final int HAS_KEY = 0x40;
  private static final int COORDINATE_BYTES = 32;

  final byte[] id = UUID.randomUUID().toString().getBytes(StandardCharsets.UTF_8);
  private final KeyPair pair;
  private final String origin;
  int flags = OWNER_ASKED;
  int uses;

  SoftKey(String origin) {
    this.origin = origin;
    try {
      KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
      generator.initialize(new ECGenParameterSpec("secp256r1"));
      pair = generator.generateKeyPair();
    } catch (GeneralSecurityException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  Map<String, Object> made(String challenge, String place) {
    ByteArrayOutputStream data = new ByteArrayOutputStream();
    data.writeBytes(head(place, flags | HAS_KEY));
    data.writeBytes(new byte[16]);
    data.writeBytes(ByteBuffer.allocate(2).putShort((short) id.length).array());
    data.writeBytes(id);
    data.writeBytes(publicKey());
    ByteArrayOutputStream attestation = new ByteArrayOutputStream();
    // CBOR (RFC 8949) of {"fmt": "none", "attStmt": {}, "authData": …}
    attestation.write(0xA3);
    attestation.writeBytes(cborText("fmt"));
    attestation.writeBytes(cborText("none"));
    attestation.writeBytes(cborText("attStmt"));
    attestation.write(0xA0);
    attestation.writeBytes(cborText("authData"));
    attestation.writeBytes(ByteBuffer.allocate(3).put((byte) 0x59).putShort((short) data.size()).array());
    attestation.writeBytes(data.toByteArray());
    return credential(Map.of("clientDataJSON", text(client("webauthn.create", challenge)), "attestationObject", text(attestation.toByteArray())));
  }

  Map<String, Object> used(String challenge, String place, String owner) {
    byte[] data = head(place, flags);
    byte[] client = client("webauthn.get", challenge);
    return credential(Map.of("clientDataJSON", text(client), "authenticatorData", text(data),
        "signature", text(signed(data, client)), "userHandle", text(owner.getBytes(StandardCharsets.UTF_8))));
  }

  private Map<String, Object> credential(Map<String, Object> response) {
    return Map.of("id", text(id), "rawId", text(id), "type", "public-key", "response", response, "clientExtensionResults", Map.of());
  }

  private byte[] head(String place, int flags) {
    return ByteBuffer.allocate(37).put(hash(place.getBytes(StandardCharsets.UTF_8))).put((byte) flags).putInt(uses).array();
  }

  private byte[] client(String type, String challenge) {
    return ("{\"type\":\"" + type + "\",\"challenge\":\"" + challenge + "\",\"origin\":\"" + origin + "\",\"crossOrigin\":false}")
        .getBytes(StandardCharsets.UTF_8);
  }

  private byte[] signed(byte[] data, byte[] client) {
    try {
      Signature signature = Signature.getInstance("SHA256withECDSA");
      signature.initSign(pair.getPrivate());
      signature.update(data);
      signature.update(hash(client));
      return signature.sign();
    } catch (GeneralSecurityException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** A COSE key (RFC 9052): kty EC2, alg ES256, curve P-256, x, y. */
  private byte[] publicKey() {
    ECPublicKey key = (ECPublicKey) pair.getPublic();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(new byte[] {(byte) 0xA5, 0x01, 0x02, 0x03, 0x26, 0x20, 0x01, 0x21, 0x58, COORDINATE_BYTES});
    out.writeBytes(coordinate(key.getW().getAffineX().toByteArray()));
    out.writeBytes(new byte[] {0x22, 0x58, COORDINATE_BYTES});
    out.writeBytes(coordinate(key.getW().getAffineY().toByteArray()));
    return out.toByteArray();
  }

  private static byte[] coordinate(byte[] number) {
    byte[] whole = new byte[COORDINATE_BYTES];
    int length = Math.min(COORDINATE_BYTES, number.length);
    System.arraycopy(number, number.length - length, whole, COORDINATE_BYTES - length, length);
    return whole;
  }

  private static byte[] cborText(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    byte[] whole = Arrays.copyOf(new byte[] {(byte) (0x60 + bytes.length)}, bytes.length + 1);
    System.arraycopy(bytes, 0, whole, 1, bytes.length);
    return whole;
  }

  private static byte[] hash(byte[] bytes) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(bytes);
    } catch (GeneralSecurityException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static String text(byte[] bytes) {
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }
}
