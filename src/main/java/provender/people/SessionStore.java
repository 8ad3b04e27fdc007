package provender.people;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where the phones that are signed in are kept. */
public interface SessionStore {

  /** A signed-in phone; the hash is that of its token, the id opens nothing. */
  record Open(String id, String tokenHash, String device, Instant openedAt, @Nullable Instant lastUsedAt) {}

  void open(String keeperId, Open session, Instant expiresAt);

  /** Whose token it is, and notes that it was used; null when it is unknown, ended or too old. */
  @Nullable Keeper keeper(String tokenHash, Instant now);

  /** Those of a keeper that still hold, the last opened first. */
  List<Open> of(String keeperId, Instant now);

  void close(String tokenHash);

  /** Ends one of a keeper's own; false when they have none of this id. */
  boolean close(String keeperId, String id);

  void closeAll(String keeperId);

  /** Ends all of a keeper's but the one with this hash. */
  void closeAllBut(String keeperId, String tokenHash);
}
