package provender.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

/** A way to a new password that one person may use once. */
@Entity
@Table(name = "password_reset")
@SuppressWarnings("NullAway.Init")
class ResetRow {
  @Id
  @Column(name = "code_hash")
  String codeHash;

  @Column(name = "keeper_id")
  String keeperId;

  @Column(name = "expires_at")
  Instant expiresAt;
}
