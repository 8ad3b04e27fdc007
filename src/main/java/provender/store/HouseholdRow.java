package provender.store;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;

/** A household. */
@Entity
@Table(name = "household")
@SuppressWarnings("NullAway.Init")
class HouseholdRow {
  @Id String id;
  String name;
}
