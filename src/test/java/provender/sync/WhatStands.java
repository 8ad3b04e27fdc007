package provender.sync;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import provender.engine.journal.Feeding;
import provender.engine.journal.Guarded;
import provender.engine.journal.Journal;
import provender.engine.node.MapNode;
import provender.engine.quantity.Day;
import provender.engine.reference.Reference;
import provender.reference.ReferenceFiles;

/**
 * What a journal adds up to: the feedings that stand with their notes, the switch that stands and the one that waits for a person.
 * Once as the engine folds it, once by the plain rule of the design: the later place counts, a withdrawal may be taken back, and a
 * switch moves only for whoever had seen where it stood.
 */
record WhatStands(Map<String, String> feedings, double switched, @Nullable String waiting) {
  private static final Reference REFERENCE = Reference.of(new MapNode(ReferenceFiles.onClasspath().read()));
  private static final ObjectMapper JSON = new ObjectMapper();

  /** @param order the places in the order in which they arrive at a phone */
  static WhatStands folded(Map<Long, String> copy, List<Long> order) throws Exception {
    Journal journal = new Journal(REFERENCE);
    for (long seq : order) {
      Map<String, Object> entry = new HashMap<>();
      JSON.readTree(copy.get(seq)).fields().forEachRemaining(field -> entry.put(field.getKey(), JSON.convertValue(field.getValue(), Object.class)));
      entry.put("seq", (double) seq);
      journal.take(new MapNode(entry));
    }
    Map<String, String> feedings = new TreeMap<>();
    for (Feeding feeding : journal.feedingsSince(Day.of(0))) {
      feedings.put(feeding.id(), feeding.note());
    }
    double switched = journal.guarded().stream().mapToDouble(Guarded::place).findFirst().orElse(0);
    return new WhatStands(feedings, switched, journal.conflicts().stream().map(conflict -> conflict.other().entry()).findFirst().orElse(null));
  }

  /** The same by the rule, read from the first place to the last. */
  static WhatStands told(Map<Long, String> copy) throws Exception {
    Map<String, String> notes = new TreeMap<>();
    Set<String> gone = new TreeSet<>();
    List<JsonNode> feedings = new ArrayList<>();
    Map<Long, JsonNode> switches = new TreeMap<>();
    for (Map.Entry<Long, String> placed : new TreeMap<>(copy).entrySet()) {
      JsonNode entry = JSON.readTree(placed.getValue());
      String about = entry.path("body").path("entry").asText();
      switch (entry.path("kind").asText()) {
        case "feeding" -> feedings.add(entry);
        case "record" -> switches.put(placed.getKey(), entry);
        case "amendment" -> notes.put(about, entry.path("body").path("set").path("body.note").asText());
        default -> {
          gone.remove(about);
          if (entry.path("body").path("withdrawn").asBoolean()) {
            gone.add(about);
          }
        }
      }
    }
    Map<String, String> standing = new TreeMap<>();
    for (JsonNode feeding : feedings) {
      String id = feeding.path("id").asText();
      if (!gone.contains(id)) {
        standing.put(id, notes.getOrDefault(id, ""));
      }
    }
    switches.values().removeIf(change -> gone.contains(change.path("id").asText()));
    return withSwitch(standing, switches);
  }

  private static WhatStands withSwitch(Map<String, String> feedings, Map<Long, JsonNode> switches) {
    long stands = 0;
    List<Long> waiting = new ArrayList<>();
    for (long place : switches.keySet()) {
      if (stands == 0 || knew(switches, place, stands)) {
        waiting.removeIf(other -> knew(switches, place, other));
        stands = place;
      } else {
        waiting.add(place);
      }
    }
    return new WhatStands(feedings, stands, waiting.isEmpty() ? null : switches.get(waiting.get(waiting.size() - 1)).path("id").asText());
  }

  /** One's own change is known, and any other whose place one had seen. */
  private static boolean knew(Map<Long, JsonNode> switches, long place, long other) {
    JsonNode change = switches.get(place);
    return change.path("device").equals(switches.get(other).path("device")) || change.path("body").path("saw").path("running").asLong() >= other;
  }
}
