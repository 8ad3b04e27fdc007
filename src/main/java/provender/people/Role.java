package provender.people;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What someone may do in a household: read, record, or also change the set-up and invite. */
public enum Role {
  GUEST,
  KEEPER,
  STEWARD;

  public boolean mayRecord() {
    return this != GUEST;
  }

  /** The role of this name in small letters, or null. */
  public static @Nullable Role named(String name) {
    for (Role role : values()) {
      if (role.name().toLowerCase(Locale.ROOT).equals(name)) {
        return role;
      }
    }
    return null;
  }
}
