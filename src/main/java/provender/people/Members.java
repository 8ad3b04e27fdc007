package provender.people;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.people.MemberStore.Change;
import provender.people.MemberStore.Member;
import provender.people.MemberStore.What;

/** What changes among the people of a household, and that one steward always stays. */
public final class Members {
  private final MemberStore members;

  public Members(MemberStore members) {
    this.members = members;
  }

  /** What became of a change. */
  public enum Outcome {
    DONE,
    /** Nobody of this id belongs to the household. */
    UNKNOWN,
    /** A household without a steward could never have one again. */
    LAST_STEWARD
  }

  public Outcome changeRole(String household, Keeper by, String about, Role role, Instant now) {
    return members.together(household, () -> {
      Member member = member(household, about);
      if (member == null) {
        return Outcome.UNKNOWN;
      }
      if (role != Role.STEWARD && isLastSteward(household, member)) {
        return Outcome.LAST_STEWARD;
      }
      if (member.role() != role) {
        members.changeRole(household, about, role);
        members.note(household, new Change(now, by.id(), about, What.ROLE, role));
      }
      return Outcome.DONE;
    });
  }

  /** Ends someone's membership, or one's own. What they wrote stays, and stays theirs. */
  public Outcome end(String household, Keeper by, String about, Instant now) {
    return members.together(household, () -> {
      Member member = member(household, about);
      if (member == null) {
        return Outcome.UNKNOWN;
      }
      if (isLastSteward(household, member)) {
        return Outcome.LAST_STEWARD;
      }
      members.end(household, about, now);
      members.note(household, new Change(now, by.id(), about, by.id().equals(about) ? What.LEFT : What.ENDED, member.role()));
      return Outcome.DONE;
    });
  }

  /** A steward gives the household into another's hands and goes on as a keeper. */
  public Outcome handOver(String household, Keeper by, String about, Instant now) {
    return members.together(household, () -> {
      if (member(household, about) == null || by.id().equals(about)) {
        return Outcome.UNKNOWN;
      }
      members.changeRole(household, about, Role.STEWARD);
      members.changeRole(household, by.id(), Role.KEEPER);
      members.note(household, new Change(now, by.id(), about, What.HANDED_OVER, Role.STEWARD));
      return Outcome.DONE;
    });
  }

  public boolean withdrawInvitation(String household, Keeper by, String id, Instant now) {
    return members.together(household, () -> {
      boolean known = members.withdrawInvitation(household, id);
      if (known) {
        members.note(household, new Change(now, by.id(), null, What.INVITATION_WITHDRAWN, null));
      }
      return known;
    });
  }

  /** Whether someone belongs to the household now. */
  public boolean belongs(String household, String keeper) {
    return member(household, keeper) != null;
  }

  private @Nullable Member member(String household, String keeper) {
    for (Member member : members.members(household)) {
      if (member.keeper().id().equals(keeper) && member.belongs()) {
        return member;
      }
    }
    return null;
  }

  private boolean isLastSteward(String household, Member member) {
    List<Member> stewards =
        members.members(household).stream().filter(one -> one.belongs() && one.role() == Role.STEWARD).toList();
    return member.role() == Role.STEWARD && stewards.size() == 1;
  }
}
