package provender.people;

import java.security.MessageDigest;
import java.nio.charset.StandardCharsets;
import java.time.Instant;

/**
 * The door for the first steward of a server: open while there is no household, for whoever holds the code that was printed
 * on the console. The code lives in memory only, so a restart makes a new one.
 */
public final class FirstStart {
  private final PeopleStore people;
  private final Households households;
  private final String code = Secrets.make();

  public FirstStart(PeopleStore people, Households households) {
    this.people = people;
    this.households = households;
  }

  public boolean isOpen() {
    return people.isEmpty();
  }

  /** For the console, and nowhere else. */
  public String code() {
    return code;
  }

  public synchronized Households.Entry found(String given, String household, String name, String password, Instant now) {
    boolean right =
        MessageDigest.isEqual(given.getBytes(StandardCharsets.UTF_8), code.getBytes(StandardCharsets.UTF_8));
    return isOpen() && right
        ? households.found(household, name, password, now)
        : Households.Entry.refused("code", "the code on this server's console, before there is any household");
  }
}
