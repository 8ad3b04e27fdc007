package provender.store;

import jakarta.persistence.Column;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import jakarta.persistence.Embeddable;
import java.io.Serializable;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A tank, and the counter of its journal. */
@Entity
@Table(name = "tank")
@SuppressWarnings("NullAway.Init")
class TankRow {
  @EmbeddedId Key key;

  String name;
  String zone;
  String epoch;
  long head;

  /** What all of its entries add up to, kept in the transaction that adds one. */
  long checksum;

  /** Null while it is listed and served. */
  @Column(name = "put_away_at")
  @Nullable Instant putAwayAt;

  @Embeddable
  record Key(@Column(name = "household_id") String household, @Column(name = "id") String tank)
      implements Serializable {}
}
