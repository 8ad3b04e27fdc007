package provender.people;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where people, households, tanks and sessions are kept. */
public interface PeopleStore {

  /** Someone with the hash of their password. */
  record Account(Keeper keeper, String passwordHash) {}

  /** A household as one of its members sees it. */
  record Membership(String household, String name, Role role) {}

  /** What an invitation lets its holder into. */
  record Invitation(String household, Role role) {}

  @Nullable Account account(String name);

  List<Membership> memberships(String keeperId);

  List<Seat> seats(String keeperId);

  /**
   * Whether entries may stand under someone's id: they belong to the household, or did. What was tapped on a shared phone
   * before its keeper left is sent by whoever signs in there next, and is not lost.
   */
  boolean hasBelonged(String household, String keeperId);

  boolean isEmpty();

  void addHousehold(String id, String name);

  void addKeeper(String household, Account account, Role role);

  void addMember(String household, String keeperId, Role role);

  void addInvitation(String household, String codeHash, Role role, Instant expiresAt);

  /** Uses an invitation up: whoever asks second, or too late, gets null. */
  @Nullable Invitation takeInvitation(String codeHash, Instant now);

  void addTank(String household, String id, String name, String zone);
}
