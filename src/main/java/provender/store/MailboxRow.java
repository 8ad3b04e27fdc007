package provender.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

/** A mail address that someone gave and has not confirmed yet. */
@Entity
@Table(name = "unconfirmed_address")
@SuppressWarnings("NullAway.Init")
class MailboxRow {
  @Id
  @Column(name = "code_hash")
  String codeHash;

  @Column(name = "keeper_id")
  String keeperId;

  String address;

  @Column(name = "expires_at")
  Instant expiresAt;
}
