package provender.sync;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import provender.sync.Answer.Fault;
import provender.sync.JournalStore.Known;
import provender.sync.JournalStore.Position;
import provender.sync.JournalStore.Stored;
import provender.sync.JournalStore.Writing;

/** Takes a batch of entries for one tank and answers for each; what is answered as kept is on disk by then. */
public final class Push {
  public static final int MOST_ENTRIES = 500;
  public static final int MOST_BYTES = 256 * 1024;

  private static final int LONGEST_ENTRY = 64 * 1024;

  private final JournalStore journals;

  public Push(JournalStore journals) {
    this.journals = journals;
  }

  public record Result(List<Answer> answers, Position position) {}

  /**
   * @param mayRecord whether entries may stand under a keeper's id
   */
  public Result take(TankKey tank, List<JsonNode> entries, Predicate<String> mayRecord, Instant now) {
    return journals.write(
        tank,
        writing -> {
          List<Answer> answers = new ArrayList<>();
          ChangesSoFar changes = new ChangesSoFar(writing);
          Map<String, Known> known = new HashMap<>(writing.known(ids(entries)));
          Predicate<String> asksOnce = remembered(mayRecord);
          for (JsonNode entry : entries) {
            answers.add(take(tank, entry, asksOnce, now, writing, known, changes));
          }
          return new Result(answers, writing.position());
        });
  }

  private static Answer take(
      TankKey tank, JsonNode sent, Predicate<String> mayRecord, Instant now, Writing writing,
      Map<String, Known> kept, ChangesSoFar changes) {
    JsonNode written = withoutPlace(sent);
    @Nullable Known known = kept.get(written.path("id").asText());
    // Under one id, what adds up to the same in the same place is the same, however its JSON is spelt. It was looked at when it came.
    if (known != null && Checksum.of(written, known.seq()) == known.checksum()) {
      return Answer.duplicate(written.path("id").asText(), known.seq());
    }
    EnvelopeReader reader = new EnvelopeReader(written);
    Envelope envelope = reader.read(tank.tank(), mayRecord);
    List<Fault> faults = new ArrayList<>(reader.faults());
    if (envelope.text().length() > LONGEST_ENTRY) {
      faults.add(new Fault("body", "an entry of at most 65536 characters"));
    }
    if (!faults.isEmpty()) {
      return Answer.refused(written.path("id").asText(), faults);
    }
    if (known != null) {
      return Answer.refused(envelope.id(), List.of(new Fault("id", "an id of its own: another entry already stands under this one")));
    }
    Stored placed = writing.append(envelope, now);
    long seq = placed.seq();
    kept.put(envelope.id(), new Known(seq, placed.checksum()));
    List<String> waiting = changes.waitingAfter(envelope, seq);
    return waiting.isEmpty() ? Answer.accepted(envelope.id(), seq) : Answer.conflicted(envelope.id(), seq, waiting);
  }

  private static Set<String> ids(List<JsonNode> entries) {
    Set<String> ids = new HashSet<>();
    entries.forEach(entry -> ids.add(entry.path("id").asText()));
    return ids;
  }

  /** A batch is mostly one keeper's: who may record is asked once for each. */
  private static Predicate<String> remembered(Predicate<String> mayRecord) {
    Map<String, Boolean> answers = new HashMap<>();
    return keeper -> answers.computeIfAbsent(keeper, mayRecord::test);
  }

  /** Place and time of arrival are the server's word; what a phone says of them is no part of the entry. */
  private static JsonNode withoutPlace(JsonNode sent) {
    return sent instanceof ObjectNode entry && (entry.has("seq") || entry.has("receivedAt"))
        ? entry.deepCopy().remove(List.of("seq", "receivedAt"))
        : sent;
  }
}
