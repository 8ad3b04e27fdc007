package provender.sync;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Journals in lists: the plainest store that keeps the contract, for tests that need no database. */
public final class MemoryJournalStore implements JournalStore {
  private final Map<TankKey, List<Stored>> journals = new HashMap<>();

  @Override
  public synchronized <T> T write(TankKey tank, Function<Writing, T> work) {
    List<Stored> draft = new ArrayList<>(journal(tank));
    T result = work.apply(new Draft(draft));
    journals.put(tank, draft);
    return result;
  }

  @Override
  public synchronized Page read(TankKey tank, long after, int limit) {
    return new Page(journal(tank).stream().filter(stored -> stored.seq() > after).limit(limit).toList(), position(tank));
  }

  @Override
  public synchronized Position position(TankKey tank) {
    return new Position(journal(tank).size(), "memory");
  }

  private List<Stored> journal(TankKey tank) {
    return journals.getOrDefault(tank, List.of());
  }

  private record Draft(List<Stored> entries) implements Writing {
    @Override
    public @Nullable Stored known(String id) {
      return entries.stream().filter(stored -> stored.id().equals(id)).findFirst().orElse(null);
    }

    @Override
    public Stored append(Envelope entry, Instant receivedAt) {
      Stored stored = new Stored(entries.size() + 1L, entry.id(), entry.written().toString(), receivedAt);
      entries.add(stored);
      return stored;
    }

    @Override
    public Position position() {
      return new Position(entries.size(), "memory");
    }
  }
}
