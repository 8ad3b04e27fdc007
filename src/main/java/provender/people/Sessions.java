package provender.people;

import io.quarkus.elytron.security.common.BcryptUtil;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;
import provender.people.PeopleStore.Account;

/** Signing in, being known, signing out. */
public final class Sessions {
  public static final Duration LASTS = Duration.ofDays(180);

  private static final int TOKEN_BYTES = 32;
  private static final SecureRandom RANDOM = new SecureRandom();

  /** Checked against when nobody has the name, so that the answer takes as long as for a wrong password. */
  private static final String NOBODYS_HASH = BcryptUtil.bcryptHash("nobody has this password");

  private final PeopleStore people;
  private final Throttle throttle = new Throttle();

  public Sessions(PeopleStore people) {
    this.people = people;
  }

  /** What came of trying to sign in: exactly one of the three. */
  public sealed interface SignIn {
    record SignedIn(Keeper keeper, String token) implements SignIn {}

    record Unknown() implements SignIn {}

    record TooMany(Duration delay) implements SignIn {}
  }

  public SignIn signIn(String name, String password, String address, Instant now) {
    String who = name + "\n" + address;
    Duration wait = throttle.wait(who, now);
    if (!wait.isZero()) {
      return new SignIn.TooMany(wait);
    }
    @Nullable Account account = people.account(name);
    boolean matches = BcryptUtil.matches(password, account == null ? NOBODYS_HASH : account.passwordHash());
    if (account == null || !matches) {
      throttle.failed(who, now);
      return new SignIn.Unknown();
    }
    throttle.succeeded(who);
    String token = newToken();
    people.openSession(hash(token), account.keeper().id(), now.plus(LASTS));
    return new SignIn.SignedIn(account.keeper(), token);
  }

  /** The keeper a token belongs to, or null when it is unknown, ended or too old. */
  public @Nullable Keeper keeper(String token, Instant now) {
    return people.sessionKeeper(hash(token), now);
  }

  public void signOut(String token) {
    people.closeSession(hash(token));
  }

  private static String newToken() {
    byte[] bytes = new byte[TOKEN_BYTES];
    RANDOM.nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  private static String hash(String token) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest);
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }
}
