package provender.people;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import provender.people.MemberStore.Change;
import provender.people.MemberStore.What;
import provender.people.PeopleStore.Account;

/** How households begin and grow: the first steward, invitations, and those who follow them. */
public final class Households {
  public static final Duration INVITATION_LASTS = Duration.ofDays(7);

  private static final int LONGEST_NAME = 100;

  private final PeopleStore people;
  private final MemberStore members;

  public Households(PeopleStore people, MemberStore members) {
    this.people = people;
    this.members = members;
  }

  /** A field that cannot be used, and what it takes. */
  public record Fault(String field, String takes) {}

  /** The keeper who came in, or what stood in the way. */
  public record Entry(@Nullable Keeper keeper, List<Fault> faults) {
    static Entry refused(String field, String takes) {
      return new Entry(null, List.of(new Fault(field, takes)));
    }
  }

  /** Makes a household with its first steward. */
  public Entry found(String household, String name, String password, Instant now) {
    List<Fault> faults = new ArrayList<>(faultsOf(name, password));
    if (isNoName(household)) {
      faults.add(new Fault("household", "a name of 1 to 100 characters"));
    }
    if (!faults.isEmpty()) {
      return new Entry(null, faults);
    }
    String id = UUID.randomUUID().toString();
    people.addHousehold(id, household.strip());
    Keeper steward = add(id, name, password, Role.STEWARD);
    members.note(id, new Change(now, steward.id(), steward.id(), What.FOUNDED, Role.STEWARD));
    return new Entry(steward, List.of());
  }

  /** A code for one person, once; whoever has it may come in within a week. */
  public String invite(String household, Keeper by, Role role, Instant now) {
    String code = Secrets.make();
    people.addInvitation(household, Secrets.hash(code), role, now.plus(INVITATION_LASTS));
    members.note(household, new Change(now, by.id(), null, What.INVITED, role));
    return code;
  }

  /** Someone new follows an invitation. A refusal over name or password leaves the invitation as it was. */
  public Entry join(String code, String name, String password, Instant now) {
    List<Fault> faults = faultsOf(name, password);
    if (!faults.isEmpty()) {
      return new Entry(null, faults);
    }
    PeopleStore.Invitation invitation = people.takeInvitation(Secrets.hash(code), now);
    if (invitation == null) {
      return Entry.refused("code", "an invitation that is not used up and not older than a week");
    }
    Keeper keeper = add(invitation.household(), name, password, invitation.role());
    noteJoined(invitation, keeper, now);
    return new Entry(keeper, List.of());
  }

  /** Someone who is known already follows an invitation into one more household. */
  public Entry join(String code, Keeper keeper, Instant now) {
    PeopleStore.Invitation invitation = people.takeInvitation(Secrets.hash(code), now);
    if (invitation == null) {
      return Entry.refused("code", "an invitation that is not used up and not older than a week");
    }
    people.addMember(invitation.household(), keeper.id(), invitation.role());
    noteJoined(invitation, keeper, now);
    return new Entry(keeper, List.of());
  }

  private void noteJoined(PeopleStore.Invitation invitation, Keeper keeper, Instant now) {
    members.note(invitation.household(), new Change(now, keeper.id(), keeper.id(), What.JOINED, invitation.role()));
  }

  private Keeper add(String household, String name, String password, Role role) {
    Keeper keeper = new Keeper(UUID.randomUUID().toString(), name.strip());
    people.addKeeper(household, new Account(keeper, Passwords.hash(password)), role);
    return keeper;
  }

  private List<Fault> faultsOf(String name, String password) {
    List<Fault> faults = new ArrayList<>();
    if (isNoName(name)) {
      faults.add(new Fault("name", "a name of 1 to 100 characters"));
    } else if (people.account(name.strip()) != null) {
      faults.add(new Fault("name", "a name that nobody on this server has yet"));
    }
    String wrong = Passwords.fault(password, name);
    if (!wrong.isEmpty()) {
      faults.add(new Fault("password", wrong));
    }
    return faults;
  }

  private static boolean isNoName(String name) {
    return name.isBlank() || name.length() > LONGEST_NAME || name.chars().anyMatch(Character::isISOControl);
  }
}
