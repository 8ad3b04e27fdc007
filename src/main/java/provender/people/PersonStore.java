package provender.people;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.people.MemberStore.Change;

/** Everything that is kept about one person, to be given to them or taken out. */
public interface PersonStore {

  /** A household someone belongs to, or belonged to until a day. */
  record Belonging(String household, String name, Role role, @Nullable Instant endedAt) {}

  /** A change among the people of a household that someone made, or that was about them. */
  record ChangeIn(String household, Change change) {}

  List<Belonging> belongings(String keeperId);

  /** The tanks of a household, by id. */
  List<String> tanks(String household);

  List<ChangeIn> changes(String keeperId);

  /** Puts another name in place of someone's and takes every way in from them: password, phones, passkeys, links, mail. */
  void erase(String keeperId, String neutralName, String passwordHash);
}
