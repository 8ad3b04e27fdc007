package provender.store;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import provender.sync.TankKey;
import provender.sync.Upkeep;

/** Says how the journals in SQL are kept. */
@ApplicationScoped
class SqlUpkeep implements Upkeep {
  private final Verified verified;
  private final Backups backups;
  private final Tanks tanks;
  private final Path data;

  SqlUpkeep(Verified verified, Backups backups, Tanks tanks, @ConfigProperty(name = "provender.data") String data) {
    this.verified = verified;
    this.backups = backups;
    this.tanks = tanks;
    this.data = Path.of(data);
  }

  @Override
  @Transactional
  public Report report() {
    List<TankRow> all = tanks.listAll();
    long entries = all.stream().mapToLong(tank -> tank.head).sum();
    List<String> damaged = verified.faults().keySet().stream().map(TankKey::tank).toList();
    return new Report(verified.at(), damaged, all.size(), entries, backups.last(), data.toFile().getUsableSpace());
  }
}
