package provender.pages;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Function;
import java.util.stream.Collectors;
import provender.sync.Checksum;
import provender.sync.Envelope;
import provender.sync.JournalStore;
import provender.sync.TankKey;

/** A phone's store in a real browser, used as a place for journals: what it is given in places, it must give back. */
final class BrowserJournalStore implements JournalStore, AutoCloseable {
  private static final String EPOCH = "browser";
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String OPEN =
      "async (name) => { const { PhoneStore } = await import('/store/phone-store.js'); const { checksumOf } = await import('/sync/checksum.js');"
          + " Object.assign(window, { store: new PhoneStore(name), checksumOf }); }";
  private static final String KEEP =
      "async ([tank, texts]) => { await store.copy.follow(tank);"
          + " await store.copy.pulled(tank, { entries: texts.map((text) => JSON.parse(text)), epoch: '" + EPOCH + "' }); }";
  private static final String READ =
      "async ([tank, after, limit]) => (await store.copy.between(tank, after + 1, Number.MAX_SAFE_INTEGER)).slice(0, limit)"
          + ".map((entry) => { const { seq, receivedAt, ...written } = entry;"
          + " return JSON.stringify({ seq, receivedAt, written: JSON.stringify(written), checksum: checksumOf([entry]) }); })";
  private static final String SUMS =
      "async ([tank, size]) => { const end = (await store.copy.cursor(tank))?.after ?? 0; const sums = [];"
          + " for (let from = 1; from <= end; from += size) { const held = await store.copy.between(tank, from, from + size - 1);"
          + " sums.push(JSON.stringify({ from: held[0].seq, to: held.at(-1).seq, count: held.length, checksum: checksumOf(held) })); }"
          + " return sums; }";

  /** The driver of the browser knows one thread only. */
  private final ExecutorService driver = Executors.newSingleThreadExecutor();
  private final Glass glass;
  private final com.microsoft.playwright.Page page;

  BrowserJournalStore(String name) {
    glass = inDriver(Glass::new);
    page = inDriver(() -> glass.stranger("light", 390, 844));
    inDriver(() -> page.evaluate(OPEN, name));
  }

  @Override
  public synchronized <T> T write(TankKey tank, Function<Writing, T> work) {
    Draft draft = new Draft(position(tank), all(tank));
    T result = work.apply(draft);
    List<String> texts = draft.added.stream().map(BrowserJournalStore::inItsPlace).toList();
    inDriver(() -> page.evaluate(KEEP, List.of(tank.tank(), texts)));
    return result;
  }

  @Override
  public Page read(TankKey tank, long after, int limit) {
    List<Stored> entries = new ArrayList<>();
    for (String text : texts(READ, List.of(tank.tank(), (double) after, limit))) {
      JsonNode row = tree(text);
      String written = row.path("written").asText();
      entries.add(new Stored(row.path("seq").asLong(), tree(written).path("id").asText(), written,
          Instant.parse(row.path("receivedAt").asText()), row.path("checksum").asLong()));
    }
    return new Page(entries, position(tank));
  }

  @Override
  public Position position(TankKey tank) {
    Object after = inDriver(() -> page.evaluate("async (tank) => (await store.copy.cursor(tank))?.after ?? 0", tank.tank()));
    return new Position(((Number) after).longValue(), EPOCH);
  }

  @Override
  public List<Sum> sums(TankKey tank, int size) {
    return texts(SUMS, List.of(tank.tank(), size)).stream().map(BrowserJournalStore::tree)
        .map(sum -> new Sum(sum.path("from").asLong(), sum.path("to").asLong(), sum.path("count").asLong(), sum.path("checksum").asLong()))
        .toList();
  }

  @Override
  public void close() {
    inDriver(() -> {
      glass.close();
      return "";
    });
    driver.shutdown();
  }

  private List<Stored> all(TankKey tank) {
    return read(tank, 0, Integer.MAX_VALUE).entries();
  }

  @SuppressWarnings("unchecked")
  private List<String> texts(String script, Object argument) {
    return (List<String>) inDriver(() -> page.evaluate(script, argument));
  }

  private static String inItsPlace(Stored stored) {
    return ((ObjectNode) tree(stored.written())).put("seq", stored.seq()).put("receivedAt", stored.receivedAt().toString()).toString();
  }

  private static JsonNode tree(String text) {
    try {
      return JSON.readTree(text);
    } catch (JsonProcessingException broken) {
      throw new IllegalStateException(broken);
    }
  }

  private <T> T inDriver(Callable<T> work) {
    try {
      return driver.submit(work).get();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(interrupted);
    } catch (ExecutionException failed) {
      throw new IllegalStateException(failed.getCause());
    }
  }

  private static final class Draft implements Writing {
    final List<Stored> added = new ArrayList<>();
    private final Position before;
    private final List<Stored> all;

    Draft(Position before, List<Stored> kept) {
      this.before = before;
      this.all = new ArrayList<>(kept);
    }

    @Override
    public Map<String, Known> known(Set<String> ids) {
      return all.stream().filter(stored -> ids.contains(stored.id()))
          .collect(Collectors.toMap(Stored::id, stored -> new Known(stored.seq(), stored.checksum())));
    }

    @Override
    public List<Stored> ofKinds(Set<String> kinds) {
      return all.stream().filter(stored -> kinds.contains(tree(stored.written()).path("kind").asText())).toList();
    }

    @Override
    public Stored append(Envelope entry, Instant receivedAt) {
      long seq = before.head() + added.size() + 1;
      Stored stored = new Stored(seq, entry.id(), entry.text(), receivedAt, Checksum.of(entry.written(), seq));
      added.add(stored);
      all.add(stored);
      return stored;
    }

    @Override
    public Position position() {
      return new Position(before.head() + added.size(), before.epoch());
    }
  }
}
