package provender.people;

import io.quarkus.elytron.security.common.BcryptUtil;
import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import provender.people.PeopleStore.Account;

/** Signing in, being known, signing out. */
public final class Sessions {
  public static final Duration LASTS = Duration.ofDays(180);

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
    return new SignIn.SignedIn(account.keeper(), open(account.keeper(), now));
  }

  /** A new session for someone who has shown who they are; its token is returned once and kept only as a hash. */
  public String open(Keeper keeper, Instant now) {
    String token = Secrets.make();
    people.openSession(Secrets.hash(token), keeper.id(), now.plus(LASTS));
    return token;
  }

  /** The keeper a token belongs to, or null when it is unknown, ended or too old. */
  public @Nullable Keeper keeper(String token, Instant now) {
    return people.sessionKeeper(Secrets.hash(token), now);
  }

  public void signOut(String token) {
    people.closeSession(Secrets.hash(token));
  }
}
