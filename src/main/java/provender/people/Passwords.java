package provender.people;

import io.quarkus.elytron.security.common.BcryptUtil;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Set;

/**
 * What a new password must be: long enough, not one of the commonest, and not the name it goes with. No rules about signs
 * or digits, and it may be pasted (OWASP ASVS 5.0, 6.2).
 */
final class Passwords {
  static final int SHORTEST = 12;

  /** More than this bcrypt would silently cut off. */
  static final int MOST_BYTES = 72;

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
    if (password.length() < SHORTEST || password.getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
      return "12 characters or more, at most 72 bytes";
    }
    boolean isName = plain.equals(name.toLowerCase(Locale.ROOT)) || plain.equals("provender" + name.toLowerCase(Locale.ROOT));
    if (COMMONEST.contains(plain) || isName || plain.chars().distinct().count() < 4) {
      return "a password that is not among the first that anyone would try";
    }
    return "";
  }

  static String hash(String password) {
    return BcryptUtil.bcryptHash(password);
  }
}
