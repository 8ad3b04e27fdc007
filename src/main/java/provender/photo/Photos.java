package provender.photo;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.Instant;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import provender.sync.JournalStore;
import provender.sync.JournalStore.Known;
import provender.sync.JournalStore.Stored;
import provender.sync.JournalStore.Writing;
import provender.sync.TankKey;

/** Takes photos in: each once, only beside its own entry, and only so many in a tank; and erases one that should not be there. */
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
    FULL,
    /** Somebody who may do so has erased it, so it does not come back. */
    ERASED,
    /** Somebody else took it. */
    NOT_THEIRS
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
          if (entry(tank, journal, id) == null) {
            return Outcome.NO_ENTRY;
          }
          if (photos.isErased(tank, id)) {
            return Outcome.ERASED;
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

  /**
   * The picture goes for good, also one that is still on its way; its entry stays.
   *
   * @param mayErase whether pictures that stand under a keeper's id may be erased
   */
  public Outcome erase(TankKey tank, String id, Predicate<String> mayErase, Instant now) {
    return journals.write(
        tank,
        journal -> {
          JsonNode entry = entry(tank, journal, id);
          if (entry == null) {
            return Outcome.NO_ENTRY;
          }
          if (!mayErase.test(entry.path("by").asText())) {
            return Outcome.NOT_THEIRS;
          }
          if (!photos.isErased(tank, id)) {
            photos.erase(tank, id, now);
          }
          return Outcome.ERASED;
        });
  }

  /** The entry of kind photo under this id; null when there is none. */
  private @Nullable JsonNode entry(TankKey tank, Writing journal, String id) {
    Known known = journal.known(Set.of(id)).get(id);
    if (known == null) {
      return null;
    }
    Stored stored = journals.read(tank, known.seq() - 1, 1).entries().get(0);
    try {
      JsonNode entry = JSON.readTree(stored.written());
      return entry.path("kind").asText().equals("photo") ? entry : null;
    } catch (JsonProcessingException damaged) {
      return null;
    }
  }
}
