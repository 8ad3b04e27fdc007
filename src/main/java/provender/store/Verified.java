package provender.store;

import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Map;
import javax.sql.DataSource;
import org.jboss.logging.Logger;
import org.jspecify.annotations.Nullable;
import provender.sync.DamagedJournal;
import provender.sync.TankKey;

/** Has every journal checked at start, before anyone is answered; one that does not add up is not served. */
@ApplicationScoped
class Verified {
  private static final Logger LOG = Logger.getLogger("provender.store");
  private static final int BEFORE_ALL_ELSE = 1;

  private final DataSource database;
  private final FirstChecksums first;
  private final RowFence fence;
  private volatile Map<TankKey, String> faults = Map.of();
  private volatile @Nullable Instant at;

  Verified(DataSource database, FirstChecksums first, RowFence fence) {
    this.database = database;
    this.first = first;
    this.fence = fence;
  }

  void start(@Observes @Priority(BEFORE_ALL_ELSE) StartupEvent started) throws SQLException {
    boolean more = true;
    while (more) {
      more = first.giveSome();
    }
    check();
  }

  void check() throws SQLException {
    try (Connection connection = database.getConnection()) {
      // One transaction, in which the fence lets in the households one after the other; it changes nothing.
      connection.setAutoCommit(false);
      faults = new JournalCheck(connection, fence::enter).faults();
      connection.rollback();
      connection.setAutoCommit(true);
    }
    at = Instant.now();
    faults.forEach(
        (tank, fault) ->
            LOG.error(
                "the journal of tank " + tank.tank() + " is damaged and not served: " + fault
                    + ". Put a backup back (README, under backups); phones then send again what it lacks"));
  }

  void mustBeSound(TankKey tank) {
    if (faults.containsKey(tank)) {
      throw new DamagedJournal(tank);
    }
  }

  Map<TankKey, String> faults() {
    return faults;
  }

  @Nullable Instant at() {
    return at;
  }
}
