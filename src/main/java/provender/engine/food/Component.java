package provender.engine.food;

import org.jspecify.annotations.Nullable;

/** A part of a diet that fish need or are kept from; the shares add up to a whole food, the flags are counted apart. */
public enum Component {
  SPONGE("sponge", true),
  ALGAE("algae", true),
  DETRITUS("detritus", true),
  TUNICATE("tunicate", true),
  CNIDARIAN("cnidarian", true),
  CRUSTACEAN("crustacean", true),
  MOLLUSC("mollusc", true),
  WORM("worm", true),
  FISH("fish", true),
  PLANKTON("plankton", true),
  ECHINODERM("echinoderm", true),
  OTHER("other", true),
  HARD_SHELLED("hard_shelled", false),
  WHOLE_PREY("whole_prey", false),
  N3_HUFA("n3_hufa", false),
  CAROTENOID("carotenoid", false);

  private final String key;
  private final boolean share;

  Component(String key, boolean share) {
    this.key = key;
    this.share = share;
  }

  public String key() {
    return key;
  }

  /** True for a part of the whole, false for a property that a food has or has not. */
  public boolean isShare() {
    return share;
  }

  public static @Nullable Component of(String key) {
    for (Component component : values()) {
      if (component.key.equals(key)) {
        return component;
      }
    }
    return null;
  }
}
