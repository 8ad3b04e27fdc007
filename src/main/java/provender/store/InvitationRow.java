package provender.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;
import provender.people.Role;

/** A way into a household that one person may use once. */
@Entity
@Table(name = "invitation")
@SuppressWarnings("NullAway.Init")
class InvitationRow {
  @EmbeddedId Key key;

  @Enumerated(EnumType.STRING)
  Role role;

  @Column(name = "expires_at")
  Instant expiresAt;

  @Embeddable
  record Key(@Column(name = "household_id") String household, @Column(name = "code_hash") String codeHash)
      implements Serializable {}
}
