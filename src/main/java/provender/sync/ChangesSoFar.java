package provender.sync;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import provender.engine.journal.SharedChanges;
import provender.engine.node.MapNode;
import provender.sync.JournalStore.Stored;
import provender.sync.JournalStore.Writing;

/** What the shared records of one journal hold while a batch is written; read only once a field that can harm is touched. */
final class ChangesSoFar {
  private static final Set<String> KINDS = Set.of("record", "withdrawal");
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Writing writing;
  private @Nullable SharedChanges changes;

  ChangesSoFar(Writing writing) {
    this.writing = writing;
  }

  /** The fields of an entry just kept that wait for a person. */
  List<String> waitingAfter(Envelope envelope, long seq) {
    if (!KINDS.contains(envelope.kind())) {
      return List.of();
    }
    MapNode entry = inPlace(envelope.written(), seq);
    if (changes != null) {
      changes.take(entry);
    }
    return SharedChanges.canHarm(entry) ? read().waiting(entry) : List.of();
  }

  /** The entry just kept is among those read. */
  private SharedChanges read() {
    SharedChanges known = changes;
    if (known == null) {
      known = new SharedChanges();
      for (Stored stored : writing.ofKinds(KINDS)) {
        known.take(inPlace(tree(stored), stored.seq()));
      }
      changes = known;
    }
    return known;
  }

  private static JsonNode tree(Stored stored) {
    try {
      return JSON.readTree(stored.written());
    } catch (JsonProcessingException damaged) {
      throw new IllegalStateException("entry " + stored.id() + " can no longer be read", damaged);
    }
  }

  private static MapNode inPlace(JsonNode written, long seq) {
    Map<String, Object> fields = new HashMap<>();
    Map<?, ?> read = JSON.convertValue(written, Map.class);
    read.forEach((name, value) -> fields.put(String.valueOf(name), value));
    fields.put("seq", (double) seq);
    return new MapNode(fields);
  }
}
