package provender.people;

import java.time.Instant;
import java.util.List;

/** Tanks that nobody needs any more, such as the demo's: put away as a whole, and brought back as they were. */
public interface TankShelf {

  /** The tank is listed and served no longer. @return whether it was among the household's tanks */
  boolean putAway(String household, String tank, Instant at);

  /** @return whether it was put away */
  boolean bringBack(String household, String tank);

  /** The tanks that the households of this keeper have put away. */
  List<Seat> away(String keeperId);
}
