package provender.people;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Where the phones that are signed in are kept. */
public interface SessionStore {

  /** A signed-in phone; the hash is that of its token, the id opens nothing. */
  record Open(String id, String tokenHash, String device, Instant openedAt, @Nullable Instant lastUsedAt) {}

  void open(String keeperId, Open session, Instant expiresAt);

  /** Whose token it is, and notes that it was used; null when it is unknown, ended, too old, or was not used since a time. */
  @Nullable Keeper keeper(String tokenHash, Instant usedSince, Instant now);

  /** Those of a keeper that still hold, the last opened first. */
  List<Open> of(String keeperId, Instant now);

  /** When each of some keepers last asked for anything from any phone; whoever never did is missing. */
  Map<String, Instant> lastSeen(List<String> keepers);

  void close(String tokenHash);

  /** Ends one of a keeper's own; false when they have none of this id. */
  boolean close(String keeperId, String id);

  void closeAll(String keeperId);

  /** Ends all of a keeper's but the one with this hash. */
  void closeAllBut(String keeperId, String tokenHash);
}
