package provender.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.jspecify.annotations.Nullable;

/** Someone who signs in. */
@Entity
@Table(name = "keeper")
@SuppressWarnings("NullAway.Init")
class KeeperRow {
  @Id String id;
  String name;

  @Column(name = "password_hash")
  String passwordHash;

  @Column(name = "mail_address")
  @Nullable String mailAddress;
}
