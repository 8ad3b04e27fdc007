package provender.people;

import java.time.Instant;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Where it is kept who belongs to a household, who did, and what changed among them. */
public interface MemberStore {

  /** Someone in a household; one who left has a day on which that was. */
  record Member(Keeper keeper, Role role, @Nullable Instant endedAt) {
    public boolean belongs() {
      return endedAt == null;
    }
  }

  /** What changed among the people of a household: who did it, about whom, and the role it is about. */
  record Change(Instant at, String by, @Nullable String about, What what, @Nullable Role role) {}

  /** The kinds of change. */
  enum What {
    FOUNDED,
    INVITED,
    INVITATION_WITHDRAWN,
    JOINED,
    ROLE,
    ENDED,
    LEFT,
    HANDED_OVER,
    RESET
  }

  /** An invitation that nobody has followed yet; the id is the hash of its code and opens nothing. */
  record Invited(String id, Role role, Instant expiresAt) {}

  /** Does some work on the people of one household while nobody else does; all of it is kept, or none. */
  <T> T together(String household, Supplier<T> work);

  /** Everyone who belongs or belonged, by name. */
  List<Member> members(String household);

  void changeRole(String household, String keeperId, Role role);

  void end(String household, String keeperId, Instant now);

  void note(String household, Change change);

  /** The last changes, newest first. */
  List<Change> changes(String household, int most);

  List<Invited> invitations(String household, Instant now);

  /** False when there is none of this id in the household. */
  boolean withdrawInvitation(String household, String id);

  void addReset(String keeperId, String codeHash, Instant expiresAt);

  /** Uses a reset up, and every other of the same keeper: whoever asks second, or too late, gets null. */
  @Nullable Keeper takeReset(String codeHash, Instant now);

  /** No reset of theirs counts any more. */
  void changePassword(String keeperId, String passwordHash);
}
