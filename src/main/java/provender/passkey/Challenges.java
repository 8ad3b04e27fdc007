package provender.passkey;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.HashMap;
import java.util.Map;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/** Random words to sign, each for one purpose, for five minutes, and once; they prove by themselves that they come from here. */
final class Challenges {
  static final Duration LAST = Duration.ofMinutes(5);

  private static final String ALGORITHM = "HmacSHA256";
  private static final int RANDOM_BYTES = 16;
  private static final int PROOF_BYTES = 32;
  private static final int BYTES = RANDOM_BYTES + Long.BYTES + PROOF_BYTES;

  private final SecureRandom random = new SecureRandom();
  private final SecretKeySpec key = new SecretKeySpec(some(PROOF_BYTES), ALGORITHM);

  /** Only what was answered rightly is remembered, and only while it would still hold. */
  private final Map<String, Instant> used = new HashMap<>();

  byte[] make(String purpose, Instant now) {
    byte[] claim =
        ByteBuffer.allocate(RANDOM_BYTES + Long.BYTES).put(some(RANDOM_BYTES)).putLong(now.plus(LAST).getEpochSecond()).array();
    return ByteBuffer.allocate(BYTES).put(claim).put(proof(claim, purpose)).array();
  }

  /** Uses a challenge up: whoever comes with it a second time, too late, or for another purpose, gets false. */
  synchronized boolean take(byte[] challenge, String purpose, Instant now) {
    if (challenge.length != BYTES) {
      return false;
    }
    byte[] claim = new byte[RANDOM_BYTES + Long.BYTES];
    byte[] proof = new byte[PROOF_BYTES];
    ByteBuffer.wrap(challenge).get(claim).get(proof);
    Instant until = Instant.ofEpochSecond(ByteBuffer.wrap(claim).getLong(RANDOM_BYTES));
    used.values().removeIf(end -> end.isBefore(now));
    return MessageDigest.isEqual(proof, proof(claim, purpose))
        && now.isBefore(until)
        && used.put(Base64.getEncoder().encodeToString(claim), until) == null;
  }

  private byte[] proof(byte[] claim, String purpose) {
    try {
      Mac mac = Mac.getInstance(ALGORITHM);
      mac.init(key);
      mac.update(claim);
      return mac.doFinal(purpose.getBytes(StandardCharsets.UTF_8));
    } catch (GeneralSecurityException impossible) {
      throw new IllegalStateException("every Java has " + ALGORITHM, impossible);
    }
  }

  private byte[] some(int count) {
    byte[] bytes = new byte[count];
    random.nextBytes(bytes);
    return bytes;
  }
}
