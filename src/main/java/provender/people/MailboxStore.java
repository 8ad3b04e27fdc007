package provender.people;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** Where mail addresses are kept, and those that nobody has confirmed yet. */
public interface MailboxStore {

  @Nullable String address(String keeperId);

  /** Takes someone's address out, and those they have not confirmed; a reset that went to it does not count any more. */
  void forget(String keeperId);

  void addUnconfirmed(String keeperId, String address, String codeHash, Instant expiresAt);

  /**
   * Keeps the address that this code was sent to instead of the one before, of which the same is true, and uses the code up; false when
   * there is none, or it is too old.
   */
  boolean confirm(String codeHash, Instant now);
}
