package provender.people;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.people.Households.Entry;
import provender.people.MemberStore.Change;
import provender.people.MemberStore.What;
import provender.people.PeopleStore.Account;
import provender.people.PeopleStore.Membership;

/**
 * A new password for who forgot theirs, by a link that works once: from a steward, from the console, or in a letter. A steward
 * can make one only for people whose every household is theirs: whoever holds the link could sign in, and must gain nothing that
 * was not theirs to give.
 */
public final class Resets {
  public static final Duration LASTS = Duration.ofHours(24);

  private final PeopleStore people;
  private final MemberStore members;
  private final SessionStore sessions;

  public Resets(PeopleStore people, MemberStore members, SessionStore sessions) {
    this.people = people;
    this.members = members;
    this.sessions = sessions;
  }

  /** The code for a link, or null when the person belongs to a household that this steward does not look after. */
  public @Nullable String make(String household, Keeper steward, String about, Instant now) {
    List<Membership> theirs = people.memberships(about);
    List<String> looksAfter =
        people.memberships(steward.id()).stream().filter(one -> one.role() == Role.STEWARD).map(Membership::household).toList();
    if (!theirs.stream().allMatch(one -> looksAfter.contains(one.household()))) {
      return null;
    }
    return members.together(household, () -> {
      members.note(household, new Change(now, steward.id(), about, What.RESET, null));
      return code(about, LASTS, now);
    });
  }

  /** For a letter to the keeper's own confirmed address; nothing changes for them until the link is followed. */
  String byMail(Keeper keeper, Duration lasts, Instant now) {
    return code(keeper.id(), lasts, now);
  }

  /** For whoever sits at the server, when no steward can help: also ends every session; null when nobody has the name. */
  public @Nullable String make(String name, Instant now) {
    Account account = people.account(name);
    if (account == null) {
      return null;
    }
    sessions.closeAll(account.keeper().id());
    return code(account.keeper().id(), LASTS, now);
  }

  /** Takes the new password; every phone of theirs has to sign in anew. A password that is refused leaves the link as it was. */
  public Entry follow(String code, String password, Instant now) {
    String wrong = Passwords.fault(password, "");
    if (!wrong.isEmpty()) {
      return Entry.refused("password", wrong);
    }
    Keeper keeper = members.takeReset(Secrets.hash(code), now);
    if (keeper == null) {
      return Entry.refused("code", "a link that is not used up and not too old");
    }
    members.changePassword(keeper.id(), Passwords.hash(password));
    sessions.closeAll(keeper.id());
    return new Entry(keeper, List.of());
  }

  private String code(String keeper, Duration lasts, Instant now) {
    String code = Secrets.make();
    members.addReset(keeper, Secrets.hash(code), now.plus(lasts));
    return code;
  }
}
