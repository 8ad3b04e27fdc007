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
import org.jspecify.annotations.Nullable;
import provender.people.Role;

/** A keeper's role in a household. */
@Entity
@Table(name = "membership")
@SuppressWarnings("NullAway.Init")
class MembershipRow {
  @EmbeddedId Key key;

  @Enumerated(EnumType.STRING)
  Role role;

  /** When they left; what they wrote stays under their name. */
  @Column(name = "ended_at")
  @Nullable Instant endedAt;

  @Embeddable
  record Key(@Column(name = "household_id") String household, @Column(name = "keeper_id") String keeper)
      implements Serializable {}
}
