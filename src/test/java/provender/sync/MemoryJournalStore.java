package provender.sync;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Journals in lists: the plainest store that keeps the contract, for tests that need no database. */
public final class MemoryJournalStore implements JournalStore {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Map<TankKey, List<Stored>> journals = new HashMap<>();
  private int restored;

  /** As a backup that holds only so many entries of this journal is put back. */
  synchronized void restore(TankKey tank, int entries) {
    journals.put(tank, List.copyOf(journal(tank).subList(0, entries)));
    restored++;
  }

  @Override
  public synchronized <T> T write(TankKey tank, Function<Writing, T> work) {
    List<Stored> draft = new ArrayList<>(journal(tank));
    T result = work.apply(new Draft(draft, epoch()));
    journals.put(tank, draft);
    return result;
  }

  @Override
  public synchronized Page read(TankKey tank, long after, int limit) {
    return new Page(journal(tank).stream().filter(stored -> stored.seq() > after).limit(limit).toList(), position(tank));
  }

  @Override
  public synchronized Position position(TankKey tank) {
    return new Position(journal(tank).size(), epoch());
  }

  @Override
  public synchronized List<Sum> sums(TankKey tank, int size) {
    List<Stored> all = journal(tank);
    List<Sum> sums = new ArrayList<>();
    for (int from = 0; from < all.size(); from += size) {
      List<Stored> page = all.subList(from, Math.min(all.size(), from + size));
      long checksum = new Page(page, position(tank)).checksum();
      sums.add(new Sum(page.get(0).seq(), page.get(page.size() - 1).seq(), page.size(), checksum));
    }
    return sums;
  }

  private List<Stored> journal(TankKey tank) {
    return journals.getOrDefault(tank, List.of());
  }

  private String epoch() {
    return "epoch " + restored;
  }

  private record Draft(List<Stored> entries, String epoch) implements Writing {
    @Override
    public Map<String, Known> known(Set<String> ids) {
      return entries.stream().filter(stored -> ids.contains(stored.id()))
          .collect(Collectors.toMap(Stored::id, stored -> new Known(stored.seq(), stored.checksum())));
    }

    @Override
    public List<Stored> ofKinds(Set<String> kinds) {
      return entries.stream().filter(stored -> kinds.contains(kind(stored))).toList();
    }

    private static String kind(Stored stored) {
      try {
        return JSON.readTree(stored.written()).path("kind").asText();
      } catch (JsonProcessingException impossible) {
        throw new IllegalStateException(impossible);
      }
    }

    @Override
    public Stored append(Envelope entry, Instant receivedAt) {
      long seq = entries.size() + 1L;
      Stored stored = new Stored(seq, entry.id(), entry.text(), receivedAt, Checksum.of(entry.written(), seq));
      entries.add(stored);
      return stored;
    }

    @Override
    public Position position() {
      return new Position(entries.size(), epoch);
    }
  }
}
