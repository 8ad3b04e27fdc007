package provender.people;

import com.nulabinc.zxcvbn.Zxcvbn;
import io.quarkus.elytron.security.common.BcryptUtil;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
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
  static final String NOBODYS_HASH = BcryptUtil.bcryptHash("nobody has this password");

  /** As many guesses in powers of ten; what is easier stands in lists of common and leaked passwords or is made from them. */
  private static final double EASILY_GUESSED = 8;

  /** Lists of some thirty thousand leaked passwords, of names, words, dates and rows of keys, all in the program itself. */
  private static final Zxcvbn GUESSER = new Zxcvbn();

  /** If so much of it is hard to guess, the whole is. */
  private static final int GUESSED_PART = 64;

  private Passwords() {}

  /** What is wrong with a password, or nothing. */
  static String fault(String password, String name) {
    if (password.length() < SHORTEST || password.length() > LONGEST) {
      return "12 to 128 characters";
    }
    String part = password.substring(0, Math.min(password.length(), GUESSED_PART));
    boolean isName = password.equalsIgnoreCase(name);
    if (isName || GUESSER.measure(part, List.of(name, "provender")).getGuessesLog10() < EASILY_GUESSED) {
      return "a password that is not among the first that anyone would try: a few words that do not belong together are good";
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
