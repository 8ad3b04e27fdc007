package provender.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** An entry in its place. */
@Entity
@Table(name = "journal_entry")
@SuppressWarnings("NullAway.Init")
class EntryRow {
  @EmbeddedId Key key;

  String id;
  String device;

  @Column(name = "device_seq")
  long deviceSeq;

  String kind;

  @Column(name = "happened_at")
  String happenedAt;

  @Column(name = "received_at")
  Instant receivedAt;

  @Column(columnDefinition = "text")
  String written;

  /** Null for what was kept before there were checksums, until {@link Verified} has reckoned it. */
  @Nullable Long checksum;

  @Embeddable
  record Key(
      @Column(name = "household_id") String household,
      @Column(name = "tank_id") String tank,
      @Column(name = "seq") long seq)
      implements Serializable {}
}
