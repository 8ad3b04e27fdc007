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
import provender.people.MemberStore;
import provender.people.Role;

/** Something that changed among the people of a household; rows are only ever added. */
@Entity
@Table(name = "household_change")
@SuppressWarnings("NullAway.Init")
class ChangeRow {
  @EmbeddedId Key key;

  @Column(name = "happened_at")
  Instant happenedAt;

  @Column(name = "by_id")
  String by;

  @Column(name = "about_id")
  @Nullable String about;

  @Enumerated(EnumType.STRING)
  MemberStore.What what;

  @Enumerated(EnumType.STRING)
  @Nullable Role role;

  @Embeddable
  record Key(@Column(name = "household_id") String household, @Column(name = "id") String id) implements Serializable {}
}
