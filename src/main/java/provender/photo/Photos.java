package provender.photo;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.Instant;
import java.util.Set;
import provender.sync.JournalStore;
import provender.sync.JournalStore.Known;
import provender.sync.JournalStore.Stored;
import provender.sync.TankKey;

/** Takes photos in: each once, only beside its own entry, and only so many in a tank. */
public final class Photos {
  /** At a quarter of a megabyte each this is about 1.3 GB. */
  public static final int MOST_IN_A_TANK = 5000;

  private static final ObjectMapper JSON = new ObjectMapper();

  private final JournalStore journals;
  private final PhotoStore photos;

  /** What became of a photo. */
  public enum Outcome {
    KEPT,
    /** It is here already; the first one stands. */
    KNOWN,
    /** The journal has no entry of kind photo under this id, so nobody knows what it shows. */
    NO_ENTRY,
    FULL
  }

  public Photos(JournalStore journals, PhotoStore photos) {
    this.journals = journals;
    this.photos = photos;
  }

  public Outcome keep(TankKey tank, String id, byte[] sent, Instant now) throws NotAPicture {
    byte[] jpeg = Picture.anew(sent);
    return journals.write(
        tank,
        journal -> {
          Known entry = journal.known(Set.of(id)).get(id);
          if (entry == null || !isPhoto(tank, entry)) {
            return Outcome.NO_ENTRY;
          }
          if (photos.has(tank, id)) {
            return Outcome.KNOWN;
          }
          if (photos.count(tank) >= MOST_IN_A_TANK) {
            return Outcome.FULL;
          }
          photos.keep(tank, id, jpeg, now);
          return Outcome.KEPT;
        });
  }

  private boolean isPhoto(TankKey tank, Known entry) {
    Stored stored = journals.read(tank, entry.seq() - 1, 1).entries().get(0);
    try {
      return JSON.readTree(stored.written()).path("kind").asText().equals("photo");
    } catch (JsonProcessingException damaged) {
      return false;
    }
  }
}
