package provender.photo;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.sync.TankKey;

/** Where photos are kept, each under the id of its journal entry. */
public interface PhotoStore {

  /** The picture as JPEG; null when none is kept under this id. */
  byte @Nullable [] find(TankKey tank, String id);

  boolean has(TankKey tank, String id);

  boolean isErased(TankKey tank, String id);

  /** The ids of all photos of a tank whose picture is kept, in the order in which they were taken. */
  List<String> ids(TankKey tank);

  long count(TankKey tank);

  void keep(TankKey tank, String id, byte[] jpeg, Instant receivedAt);

  /** The picture goes, or may not come any more; that it was erased is remembered. */
  void erase(TankKey tank, String id, Instant at);
}
