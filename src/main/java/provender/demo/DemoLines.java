package provender.demo;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import provender.demo.DemoScenario.DemoTank;

/** Turns the lines of one demo journal into entries: real days, ids, and references resolved. */
final class DemoLines {
  private static final String REF = "ref:";
  private static final DateTimeFormatter WITH_OFFSET = DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm:ssXXX");

  private final DemoTank tank;
  private final DemoClock clock;
  private final Map<String, String> idsByRef = new HashMap<>();
  private final Map<String, Integer> lastSeq = new HashMap<>();
  private int number;

  DemoLines(DemoTank tank, DemoClock clock) {
    this.tank = tank;
    this.clock = clock;
  }

  /** The entry of a line; nothing when it lies ahead, or changes an entry that does. */
  Optional<JsonNode> entry(JsonNode line) {
    number++;
    OffsetDateTime happened = clock.at(line.path("at").asText());
    OffsetDateTime recorded = line.has("recorded") ? clock.at(line.path("recorded").asText()) : happened;
    String target = line.path("body").path("entry").asText();
    boolean targetLiesAhead = target.startsWith(REF) && !idsByRef.containsKey(target.substring(REF.length()));
    if (clock.isToCome(happened) || clock.isToCome(recorded) || targetLiesAhead) {
      return Optional.empty();
    }
    String id = id(recorded.toInstant().toEpochMilli());
    if (line.has("ref")) {
      idsByRef.put(line.path("ref").asText(), id);
    }
    String by = line.path("by").asText();
    String device = UUID.nameUUIDFromBytes((tank.id() + by).getBytes(StandardCharsets.UTF_8)).toString();
    ObjectNode entry = DemoScenario.JSON.createObjectNode();
    entry.put("id", id).put("tank", tank.id()).put("device", device);
    entry.put("deviceSeq", lastSeq.merge(device, 1, Integer::sum));
    entry.put("kind", line.path("kind").asText()).put("v", line.path("v").asInt(1));
    entry.put("happenedAt", happened.format(WITH_OFFSET)).put("zone", tank.zone());
    entry.put("recordedAt", recorded.toInstant().toString()).put("by", by);
    entry.set("body", body(line.path("body").deepCopy()));
    return Optional.of(entry);
  }

  private JsonNode body(JsonNode body) {
    if (body.path("entry").asText().startsWith(REF)) {
      ((ObjectNode) body).put("entry", idsByRef.get(body.path("entry").asText().substring(REF.length())));
    }
    if (body.path("set") instanceof ObjectNode set) {
      for (String field : new String[] {"measuredOn", "arrivedOn"}) {
        if (set.has(field)) {
          set.put(field, clock.day(set.path(field).asText()).toString());
        }
      }
      if (set.has("happenedAt")) {
        set.put("happenedAt", clock.at(set.path("happenedAt").asText()).format(WITH_OFFSET));
      }
    }
    return body;
  }

  /** A UUID of version 7 (RFC 9562): the time, then bits that only depend on the tank and the line. */
  private String id(long millis) {
    UUID bits = UUID.nameUUIDFromBytes((tank.id() + ":" + number).getBytes(StandardCharsets.UTF_8));
    long high = (millis << 16) | 0x7000L | (bits.getMostSignificantBits() & 0xFFFL);
    long low = (bits.getLeastSignificantBits() & 0x3FFFFFFFFFFFFFFFL) | 0x8000000000000000L;
    return new UUID(high, low).toString();
  }
}
