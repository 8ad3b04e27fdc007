package provender.people;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.people.MemberStore.Change;
import provender.people.MemberStore.Member;
import provender.people.MemberStore.What;
import provender.people.PersonStore.Belonging;

/**
 * Takes a person out of the records, on their request. What they fed stays, under a number instead of a name, since fish
 * were fed and others reckon with it; nothing that remains says who the number was.
 */
public final class Erasure {
  private static final int SIGNS = 8;

  private final PersonStore persons;
  private final MemberStore members;

  public Erasure(PersonStore persons, MemberStore members) {
    this.persons = persons;
    this.members = members;
  }

  /** What came of it: the new name, or the household that would be left without a steward. */
  public record Outcome(@Nullable String neutralName, @Nullable String needsSteward) {}

  public Outcome erase(Keeper keeper, Instant now) {
    List<Belonging> current = persons.belongings(keeper.id()).stream().filter(one -> one.endedAt() == null).toList();
    for (Belonging belonging : current) {
      if (leavesOthersWithoutSteward(belonging, keeper)) {
        return new Outcome(null, belonging.name());
      }
    }
    for (Belonging belonging : current) {
      members.together(belonging.household(), () -> {
        members.end(belonging.household(), keeper.id(), now);
        members.note(belonging.household(), new Change(now, keeper.id(), keeper.id(), What.LEFT, belonging.role()));
        return belonging;
      });
    }
    String neutral = "Former keeper " + Secrets.make().replaceAll("[^A-Za-z0-9]", "").substring(0, SIGNS);
    persons.erase(keeper.id(), neutral, Passwords.hash(Secrets.make()));
    return new Outcome(neutral, null);
  }

  /** A household of one's own may end with oneself. */
  private boolean leavesOthersWithoutSteward(Belonging belonging, Keeper keeper) {
    List<Member> others = new ArrayList<>(members.members(belonging.household()));
    others.removeIf(one -> !one.belongs() || one.keeper().id().equals(keeper.id()));
    return belonging.role() == Role.STEWARD && !others.isEmpty() && others.stream().noneMatch(one -> one.role() == Role.STEWARD);
  }
}
