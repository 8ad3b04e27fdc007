package provender.store;

import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.transaction.Transactional;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;

/**
 * After a backup was put back, every journal begins a new epoch: phones then know that the server may have forgotten
 * entries, and send theirs again.
 */
@ApplicationScoped
class Restored {
  private static final Logger LOG = Logger.getLogger("provender.store");

  private final Tanks tanks;
  private final boolean restored;

  Restored(Tanks tanks, @ConfigProperty(name = "provender.restored") boolean restored) {
    this.tanks = tanks;
    this.restored = restored;
  }

  @Transactional
  void start(@Observes StartupEvent started) {
    if (restored) {
      tanks.listAll().forEach(tank -> tank.epoch = UUID.randomUUID().toString());
      LOG.info("restored: every journal begins a new epoch, and phones will send again what is missing");
    }
  }
}
