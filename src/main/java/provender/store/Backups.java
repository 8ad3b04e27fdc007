package provender.store;

import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.jspecify.annotations.Nullable;

/** A whole copy of the embedded database each day, made while it runs; old copies make room by {@link Kept}. */
@ApplicationScoped
class Backups {
  private static final Logger LOG = Logger.getLogger("provender.store");
  private static final String PREFIX = "provender-";
  private static final String SUFFIX = ".zip";

  private final DataSource database;
  private final Path folder;
  private final boolean wanted;
  private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor();

  Backups(
      DataSource database,
      @ConfigProperty(name = "provender.backup.folder") String folder,
      @ConfigProperty(name = "provender.backup.wanted") boolean wanted) {
    this.database = database;
    this.folder = Path.of(folder);
    this.wanted = wanted;
  }

  void start(@Observes StartupEvent started) {
    if (wanted) {
      clock.scheduleWithFixedDelay(this::today, 0, 1, TimeUnit.HOURS);
    }
  }

  void stop(@Observes ShutdownEvent stopping) {
    clock.shutdownNow();
  }

  /** A failing backup is told and tried again in an hour; feeding goes on. */
  private void today() {
    LocalDate today = LocalDate.now(ZoneOffset.UTC);
    Path target = folder.resolve(PREFIX + today + SUFFIX);
    try {
      if (!Files.exists(target)) {
        Files.createDirectories(folder);
        copyTo(target);
        prune(today);
      }
    } catch (IOException | UncheckedIOException | SQLException failed) {
      LOG.error("today's backup could not be made in " + folder, failed);
    }
  }

  /** Under another name until it is whole, so that a copy cut short is never taken for one. */
  private void copyTo(Path target) throws SQLException, IOException {
    Path growing = target.resolveSibling(target.getFileName() + ".part");
    Files.deleteIfExists(growing);
    try (Connection connection = database.getConnection();
        PreparedStatement backup = connection.prepareStatement("backup to ?")) {
      backup.setString(1, growing.toString());
      backup.execute();
    }
    Files.move(growing, target);
  }

  /** The day of the newest copy; null when there is none, or none can be seen. */
  @Nullable LocalDate last() {
    try {
      return days().stream().max(LocalDate::compareTo).orElse(null);
    } catch (IOException unseen) {
      return null;
    }
  }

  private void prune(LocalDate today) throws IOException {
    List<LocalDate> days = days();
    List<LocalDate> kept = Kept.of(days, today);
    for (LocalDate day : days) {
      if (!kept.contains(day)) {
        Files.deleteIfExists(folder.resolve(PREFIX + day + SUFFIX));
      }
    }
  }

  private List<LocalDate> days() throws IOException {
    List<LocalDate> days = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      files.map(file -> file.getFileName().toString())
          .filter(name -> name.matches(PREFIX + "\\d{4}-\\d{2}-\\d{2}\\" + SUFFIX))
          .forEach(name -> days.add(LocalDate.parse(name.substring(PREFIX.length(), name.length() - SUFFIX.length()))));
    }
    return days;
  }
}
