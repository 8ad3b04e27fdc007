package provender.sync;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How the journals of this server are kept, for whoever runs it. */
public interface Upkeep {

  /**
   * @param verified when every journal was last read whole and added up
   * @param damaged the tanks whose journals did not add up
   * @param lastBackup the day of the newest whole copy; null when there is none
   * @param freeBytes the room left where the data lie
   */
  record Report(
      @Nullable Instant verified, List<String> damaged, long journals, long entries, @Nullable LocalDate lastBackup, long freeBytes) {}

  Report report();
}
