package provender.people;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.github.bucket4j.Bucket;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import provender.people.Households.Fault;
import provender.people.Letters.About;
import provender.people.PeopleStore.Account;

/**
 * The mail address that someone may give, to be helped back in without a steward. It counts once a link sent to it was followed:
 * whoever reads a mistyped one would otherwise be let in. What is asked for by name alone answers the same for every name.
 */
public final class Mailboxes {
  /** As long as a code sent another way may count (OWASP ASVS 5.0, 6.5.5). */
  public static final Duration LASTS = Duration.ofMinutes(10);

  /** Whoever asks under somebody else's name cannot flood their mailbox. */
  private static final int MOST_IN_AN_HOUR = 5;

  private static final int REMEMBERED = 10_000;
  private static final int LONGEST = 254;
  private static final Pattern ADDRESS = Pattern.compile("[^\\s@<>(),;:\"\\\\\\[\\]\\p{Cntrl}]{1,64}@(?:[\\p{Alnum}-]+\\.)+[\\p{Alnum}-]{2,}");

  private final PeopleStore people;
  private final MailboxStore mailboxes;
  private final Resets resets;
  private final Letters letters;
  private final Cache<String, Bucket> sent =
      Caffeine.newBuilder().maximumSize(REMEMBERED).expireAfterAccess(Duration.ofHours(2)).build();

  public Mailboxes(PeopleStore people, MailboxStore mailboxes, Resets resets, Letters letters) {
    this.people = people;
    this.mailboxes = mailboxes;
    this.resets = resets;
    this.letters = letters;
  }

  /** Whether addresses are of any use on this server. */
  public boolean areRead() {
    return letters.areSent();
  }

  public @Nullable String address(Keeper keeper) {
    return mailboxes.address(keeper.id());
  }

  /** Sends a link to an address; until it is followed, the one before stays. Says what is wrong, or nothing. */
  public List<Fault> offer(Keeper keeper, String address, String language, Instant now) {
    String plain = address.strip();
    if (plain.length() > LONGEST || !ADDRESS.matcher(plain).matches()) {
      return List.of(new Fault("address", "a mail address such as name@example.org"));
    }
    if (!maySend(keeper)) {
      return List.of(new Fault("address", "at most " + MOST_IN_AN_HOUR + " letters in an hour; try again later"));
    }
    String code = Secrets.make();
    mailboxes.addUnconfirmed(keeper.id(), plain, Secrets.hash(code), now.plus(LASTS));
    letters.post(plain, About.ADDRESS, language, keeper.name(), code);
    return List.of();
  }

  public void forget(Keeper keeper) {
    mailboxes.forget(keeper.id());
  }

  public boolean confirm(String code, Instant now) {
    return mailboxes.confirm(Secrets.hash(code), now);
  }

  /** Sends a link for a new password, if there is someone of this name who has confirmed an address. */
  public void helpBackIn(String name, String language, Instant now) {
    Account account = people.account(name);
    String address = account == null ? null : mailboxes.address(account.keeper().id());
    if (account == null || address == null || !maySend(account.keeper())) {
      return;
    }
    Keeper keeper = account.keeper();
    letters.post(address, About.PASSWORD, language, keeper.name(), resets.byMail(keeper, LASTS, now));
  }

  private boolean maySend(Keeper keeper) {
    return sent.get(keeper.id(), id -> Bucket.builder().addLimit(limit -> limit.capacity(MOST_IN_AN_HOUR)
        .refillGreedy(MOST_IN_AN_HOUR, Duration.ofHours(1))).build()).tryConsume(1);
  }
}
