package provender.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A picture under the id of its entry. */
@Entity
@Table(name = "photo")
@SuppressWarnings("NullAway.Init")
class PhotoRow {
  @EmbeddedId Key key;

  @Column(name = "received_at")
  Instant receivedAt;

  /** Null once it was erased. */
  byte @Nullable [] jpeg;

  @Column(name = "erased_at")
  @Nullable Instant erasedAt;

  @Embeddable
  record Key(
      @Column(name = "household_id") String household,
      @Column(name = "tank_id") String tank,
      @Column(name = "id") String id)
      implements Serializable {}
}
