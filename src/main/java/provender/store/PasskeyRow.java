package provender.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A keeper's passkey: its public half and what they call it. */
@Entity
@Table(name = "passkey")
@SuppressWarnings("NullAway.Init")
class PasskeyRow {
  @EmbeddedId Key key;

  @Column(name = "credential_id")
  String credential;

  String place;

  @Column(name = "public_key")
  String publicKey;

  @Column(name = "may_be_copied")
  boolean mayBeCopied;

  long uses;
  String name;

  @Column(name = "made_at")
  Instant madeAt;

  @Column(name = "used_at")
  @Nullable Instant usedAt;

  @Embeddable
  record Key(@Column(name = "keeper_id") String keeper, @Column(name = "id") String id) implements Serializable {}
}
