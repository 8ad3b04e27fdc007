package provender.people;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import provender.people.PeopleStore.Account;
import provender.people.SessionStore.Open;

/** Signing in, being known, signing out, on each phone for itself. */
public final class Sessions {
  public static final Duration LASTS = Duration.ofDays(180);

  /** A phone that was in a drawer for so long asks who holds it. */
  public static final Duration UNUSED = Duration.ofDays(60);

  private static final int LONGEST_DEVICE = 60;

  private final PeopleStore people;
  private final SessionStore sessions;
  private final MemberStore members;
  private final Throttle throttle = new Throttle();

  public Sessions(PeopleStore people, SessionStore sessions, MemberStore members) {
    this.people = people;
    this.sessions = sessions;
    this.members = members;
  }

  /** What came of trying to sign in: exactly one of the three. */
  public sealed interface SignIn {
    record SignedIn(Keeper keeper, String token) implements SignIn {}

    record Unknown() implements SignIn {}

    record TooMany(Duration delay) implements SignIn {}
  }

  /** A phone that is signed in, as its keeper sees it in a list. */
  public record Device(String id, String name, Instant openedAt, @Nullable Instant lastUsedAt, boolean asking) {}

  public SignIn signIn(String name, String password, String address, String device, Instant now) {
    String who = name + "\n" + address;
    Duration wait = throttle.wait(who, now);
    if (!wait.isZero()) {
      return new SignIn.TooMany(wait);
    }
    @Nullable Account account = people.account(name);
    if (!Passwords.matches(password, account) || account == null) {
      throttle.failed(who, now);
      return new SignIn.Unknown();
    }
    throttle.succeeded(who);
    return new SignIn.SignedIn(account.keeper(), open(account.keeper(), device, now));
  }

  /** A new session for someone who has shown who they are; its token is returned once and kept only as a hash. */
  public String open(Keeper keeper, String device, Instant now) {
    String token = Secrets.make();
    String plain = device.codePoints().filter(sign -> !Character.isISOControl(sign)).limit(LONGEST_DEVICE / 2)
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
    sessions.open(keeper.id(), new Open(UUID.randomUUID().toString(), Secrets.hash(token), plain, now, now), now.plus(LASTS));
    return token;
  }

  /** The keeper a token belongs to, or null when it is unknown, ended or too old. */
  public @Nullable Keeper keeper(String token, Instant now) {
    return sessions.keeper(Secrets.hash(token), now.minus(UNUSED), now);
  }

  public void signOut(String token) {
    sessions.close(Secrets.hash(token));
  }

  public List<Device> devices(Keeper keeper, String token, Instant now) {
    String asking = Secrets.hash(token);
    return sessions.of(keeper.id(), now).stream()
        .map(one -> new Device(one.id(), one.device(), one.openedAt(), one.lastUsedAt(), one.tokenHash().equals(asking)))
        .toList();
  }

  /** Ends one of the keeper's own; false when they have none of this id. */
  public boolean end(Keeper keeper, String device) {
    return sessions.close(keeper.id(), device);
  }

  public void endOthers(Keeper keeper, String token) {
    sessions.closeAllBut(keeper.id(), Secrets.hash(token));
  }

  /**
   * Asks a signed-in keeper once more who they are, before something that would let others in or end everything (OWASP ASVS
   * 5.0, 7.5.1). Says what is wrong, or nothing.
   */
  public List<Households.Fault> confirm(Keeper keeper, String field, String password, Instant now) {
    String who = keeper.id() + "\nchange";
    if (!throttle.wait(who, now).isZero()) {
      return List.of(new Households.Fault(field, "your password; after several wrong ones, a minute's pause"));
    }
    if (!Passwords.matches(password, people.account(keeper.name()))) {
      throttle.failed(who, now);
      return List.of(new Households.Fault(field, "your password"));
    }
    throttle.succeeded(who);
    return List.of();
  }

  /** A new password by whoever knows the old one; other phones have to sign in anew. Says what is wrong, or nothing. */
  public List<Households.Fault> changePassword(Keeper keeper, String token, String old, String chosen, Instant now) {
    List<Households.Fault> unconfirmed = confirm(keeper, "old", old, now);
    if (!unconfirmed.isEmpty()) {
      return unconfirmed;
    }
    String wrong = Passwords.fault(chosen, keeper.name());
    if (!wrong.isEmpty()) {
      return List.of(new Households.Fault("password", wrong));
    }
    members.changePassword(keeper.id(), Passwords.hash(chosen));
    endOthers(keeper, token);
    return List.of();
  }
}
