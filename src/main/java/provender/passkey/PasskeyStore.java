package provender.passkey;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.people.Keeper;

/** Where passkeys are kept. */
public interface PasskeyStore {

  /**
   * A passkey as it is kept.
   *
   * @param id opens nothing; for lists and addresses
   * @param credential what the phone calls it
   * @param place the name it was made for
   * @param publicKey what the phone said of it when it was made, in Base64
   * @param uses the phone's own counter, zero where it has none
   */
  record Kept(
      Keeper keeper,
      String id,
      String credential,
      String place,
      String publicKey,
      boolean mayBeCopied,
      long uses,
      String name,
      Instant madeAt,
      @Nullable Instant usedAt) {}

  void add(Kept passkey);

  @Nullable Kept find(String credential);

  /** One keeper's own, the oldest first. */
  List<Kept> of(String keeperId);

  /** False when the keeper has none of this id. */
  boolean rename(String keeperId, String id, String name);

  /** False when the keeper has none of this id. */
  boolean remove(String keeperId, String id);

  void removeAll(String keeperId);

  void noteUse(Kept passkey, long uses, Instant now);
}
