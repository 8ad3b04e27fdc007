package provender.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A phone that is signed in, known by the hash of its token. */
@Entity
@Table(name = "keeper_session")
@SuppressWarnings("NullAway.Init")
class SessionRow {
  @Id
  @Column(name = "token_hash")
  String tokenHash;

  @Column(name = "keeper_id")
  String keeperId;

  @Column(name = "expires_at")
  Instant expiresAt;

  String id;
  String device;

  @Column(name = "opened_at")
  Instant openedAt;

  @Column(name = "last_used_at")
  @Nullable Instant lastUsedAt;
}
