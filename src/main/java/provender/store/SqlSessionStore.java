package provender.store;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import provender.people.Keeper;
import provender.people.SessionStore;

/** The signed-in phones in SQL. */
@ApplicationScoped
@Transactional
class SqlSessionStore implements SessionStore {
  /** Often enough for a keeper who looks for a phone that is not theirs, without a write for every request. */
  private static final Duration NOTED_EVERY = Duration.ofMinutes(10);

  private final PeopleRows.PhoneSessions sessions;
  private final PeopleRows.Keepers keepers;

  SqlSessionStore(PeopleRows.PhoneSessions sessions, PeopleRows.Keepers keepers) {
    this.sessions = sessions;
    this.keepers = keepers;
  }

  @Override
  public void open(String keeperId, Open session, Instant expiresAt) {
    SessionRow row = new SessionRow();
    row.tokenHash = session.tokenHash();
    row.keeperId = keeperId;
    row.expiresAt = expiresAt;
    row.id = session.id();
    row.device = session.device();
    row.openedAt = session.openedAt();
    row.lastUsedAt = session.lastUsedAt();
    sessions.persist(row);
  }

  @Override
  public @Nullable Keeper keeper(String tokenHash, Instant usedSince, Instant now) {
    SessionRow session = sessions.findById(tokenHash);
    if (session == null || !session.expiresAt.isAfter(now) || (session.lastUsedAt != null && session.lastUsedAt.isBefore(usedSince))) {
      return null;
    }
    if (session.lastUsedAt == null || session.lastUsedAt.plus(NOTED_EVERY).isBefore(now)) {
      // Not through the row: it may be gone by the time of the commit, which must not fail the request.
      sessions.update("lastUsedAt = ?1 where tokenHash = ?2", now, tokenHash);
    }
    KeeperRow row = keepers.findById(session.keeperId);
    return row == null ? null : new Keeper(row.id, row.name);
  }

  @Override
  public List<Open> of(String keeperId, Instant now) {
    return sessions.list("keeperId = ?1 and expiresAt > ?2 order by openedAt desc", keeperId, now).stream()
        .map(row -> new Open(row.id, row.tokenHash, row.device, row.openedAt, row.lastUsedAt))
        .toList();
  }

  @Override
  public Map<String, Instant> lastSeen(List<String> keepers) {
    Map<String, Instant> seen = new HashMap<>();
    for (SessionRow row : sessions.list("keeperId in ?1 and lastUsedAt is not null", keepers)) {
      Instant used = row.lastUsedAt;
      if (used != null) {
        seen.merge(row.keeperId, used, (one, other) -> one.isAfter(other) ? one : other);
      }
    }
    return seen;
  }

  @Override
  public void close(String tokenHash) {
    sessions.delete("tokenHash", tokenHash);
  }

  @Override
  public boolean close(String keeperId, String id) {
    return sessions.delete("keeperId = ?1 and id = ?2", keeperId, id) > 0;
  }

  @Override
  public void closeAll(String keeperId) {
    sessions.delete("keeperId", keeperId);
  }

  @Override
  public void closeAllBut(String keeperId, String tokenHash) {
    sessions.delete("keeperId = ?1 and tokenHash <> ?2", keeperId, tokenHash);
  }
}
