package provender.passkey;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Where the app is reached: the name a browser keeps passkeys under, and the addresses they may be used from. */
public record Place(String name, Set<String> origins) {

  /**
   * @param host name and port, as the browser asked for it
   * @return null for a bare number: browsers make passkeys for names only
   */
  public static @Nullable Place of(String host) {
    String name = host.replaceFirst(":\\d*$", "");
    if (name.isEmpty() || name.startsWith("[") || name.matches("[\\d.]+")) {
      return null;
    }
    boolean isThisMachine = name.equals("localhost");
    return new Place(name, isThisMachine ? Set.of("http://" + host, "https://" + host) : Set.of("https://" + host));
  }
}
