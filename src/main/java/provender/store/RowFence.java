package provender.store;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * A second fence, where the database has one: on PostgreSQL it gives out and takes entries of the one household that the
 * transaction has named, whatever a statement asks for (db/postgresql/R__row_fence.sql). The embedded database has none.
 */
@ApplicationScoped
class RowFence {
  private static final String ENTER = "select set_config('provender.household', ?1, true)";

  private final EntityManager entities;
  private final boolean stands;

  RowFence(EntityManager entities, @ConfigProperty(name = "quarkus.datasource.db-kind") String kind) {
    this.entities = entities;
    this.stands = kind.equals("postgresql");
  }

  /** Until the end of this transaction. */
  void enter(String household) {
    if (stands) {
      entities.createNativeQuery(ENTER).setParameter(1, household).getSingleResult();
    }
  }

  /** The same over a connection of one's own, whose transaction has begun. */
  void enter(Connection connection, String household) throws SQLException {
    if (stands) {
      try (PreparedStatement enter = connection.prepareStatement(ENTER.replace("?1", "?"))) {
        enter.setString(1, household);
        enter.execute();
      }
    }
  }
}
