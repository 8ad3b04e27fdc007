package provender.people;

import io.quarkus.elytron.security.common.BcryptUtil;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import provender.people.PeopleStore.Account;

/**
 * What a new password must be: long enough, not one of the commonest, and not the name it goes with. No rules about signs
 * or digits, and it may be pasted (OWASP ASVS 5.0, 6.2).
 */
final class Passwords {
  static final int SHORTEST = 12;

  static final int LONGEST = 128;

  /** More than this bcrypt would silently cut off; what is longer is hashed twice. */
  private static final int BCRYPT_BYTES = 72;

  /** Checked against when nobody has the name, so that the answer takes as long as for a wrong password. */
  private static final String NOBODYS_HASH = BcryptUtil.bcryptHash("nobody has this password");

  /** The commonest of twelve characters and more, as they stand in public lists; from memory. */
  private static final Set<String> COMMONEST =
      Set.of(
          "123456789012", "1234567890123", "111111111111", "qwertyuiop12", "qwertyuiop123", "password1234", "passwordpassword",
          "password12345", "administrator", "1q2w3e4r5t6y", "1qaz2wsx3edc", "qwerty123456", "iloveyou1234", "abcdefghijkl",
          "abcd1234abcd", "letmeinletmein", "welcome12345", "000000000000", "qazwsxedcrfv", "changeme1234");

  private Passwords() {}

  /** What is wrong with a password, or nothing. */
  static String fault(String password, String name) {
    String plain = password.toLowerCase(Locale.ROOT);
    if (password.length() < SHORTEST || password.length() > LONGEST) {
      return "12 to 128 characters";
    }
    boolean isName = plain.equals(name.toLowerCase(Locale.ROOT)) || plain.equals("provender" + name.toLowerCase(Locale.ROOT));
    if (COMMONEST.contains(plain) || isName || plain.chars().distinct().count() < 4) {
      return "a password that is not among the first that anyone would try";
    }
    return "";
  }

  static String hash(String password) {
    return BcryptUtil.bcryptHash(fitting(password));
  }

  /** Does the same work whether or not there is such an account. */
  static boolean matches(String password, @Nullable Account account) {
    return BcryptUtil.matches(fitting(password), account == null ? NOBODYS_HASH : account.passwordHash());
  }

  private static String fitting(String password) {
    byte[] bytes = password.getBytes(StandardCharsets.UTF_8);
    if (bytes.length <= BCRYPT_BYTES) {
      return password;
    }
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-384");
      digest.update("provender password:".getBytes(StandardCharsets.UTF_8));
      return Base64.getEncoder().encodeToString(digest.digest(bytes));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-384", impossible);
    }
  }
}
