package provender.passkey;

import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import provender.passkey.PasskeyStore.Kept;
import provender.passkey.Signatures.Made;
import provender.passkey.Signatures.Used;
import provender.people.Keeper;

/** Making, using, naming and removing passkeys. */
public final class Passkeys {
  /** Nobody carries more; a bound on what one person can fill the store with. */
  public static final int MOST = 20;

  public static final int LONGEST_NAME = 60;

  private static final String USE = "use";

  private final PasskeyStore store;
  private final Signatures signatures = new Signatures();
  private final Challenges challenges = new Challenges();

  public Passkeys(PasskeyStore store) {
    this.store = store;
  }

  /** The kinds of key that are understood, by their numbers in the IANA registry, the best liked first. */
  public List<Long> algorithms() {
    return signatures.algorithms();
  }

  /** A challenge, in the alphabet in which browsers speak (base64url). */
  public String challengeToMake(Keeper keeper, Instant now) {
    return text(challenges.make(toMake(keeper), now));
  }

  public String challengeToUse(Instant now) {
    return text(challenges.make(USE, now));
  }

  /**
   * Keeps a passkey that a phone has just made.
   *
   * @param response what the browser said, as JSON
   * @return null when it is not what was asked for, or known already
   */
  public @Nullable Kept make(Keeper keeper, Place place, String response, String name, Instant now) {
    Made made = signatures.made(response, place);
    if (made == null || !challenges.take(made.challenge(), toMake(keeper), now)) {
      return null;
    }
    String credential = text(made.credential());
    if (store.find(credential) != null || store.of(keeper.id()).size() >= MOST) {
      return null;
    }
    Kept passkey =
        new Kept(
            keeper, UUID.randomUUID().toString(), credential, place.name(), made.publicKey(), made.mayBeCopied(), made.uses(), name, now, null);
    store.add(passkey);
    return passkey;
  }

  /** Who has shown that they are it, or null; a response holds for one signing in. */
  public @Nullable Keeper use(Place place, String response, Instant now) {
    String credential = signatures.credential(response);
    Kept passkey = credential == null ? null : store.find(credential);
    if (passkey == null || !passkey.place().equals(place.name())) {
      return null;
    }
    Used used = signatures.used(response, place, passkey);
    if (used == null || !challenges.take(used.challenge(), USE, now)) {
      return null;
    }
    store.noteUse(passkey, used.uses(), now);
    return passkey.keeper();
  }

  public List<Kept> of(Keeper keeper) {
    return store.of(keeper.id());
  }

  public boolean rename(Keeper keeper, String id, String name) {
    return store.rename(keeper.id(), id, name);
  }

  public boolean remove(Keeper keeper, String id) {
    return store.remove(keeper.id(), id);
  }

  /** When someone had to be helped back in, whoever else was in must not stay. */
  public void removeAll(Keeper keeper) {
    store.removeAll(keeper.id());
  }

  private static String toMake(Keeper keeper) {
    return "make\n" + keeper.id();
  }

  private static String text(byte[] bytes) {
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }
}
