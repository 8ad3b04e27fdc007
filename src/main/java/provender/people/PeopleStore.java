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

  /** Everyone who belongs to a household, by name. */
  List<Keeper> keepers(String household);

  boolean isMember(String household, String keeperId);

  boolean isEmpty();

  void addHousehold(String id, String name);

  void addKeeper(String household, Account account, Role role);

  void addMember(String household, String keeperId, Role role);

  void addInvitation(String household, String codeHash, Role role, Instant expiresAt);

  /** Uses an invitation up: whoever asks second, or too late, gets null. */
  @Nullable Invitation takeInvitation(String codeHash, Instant now);

  void addTank(String household, String id, String name, String zone);

  void openSession(String tokenHash, String keeperId, Instant expiresAt);

  @Nullable Keeper sessionKeeper(String tokenHash, Instant now);

  void closeSession(String tokenHash);
}
