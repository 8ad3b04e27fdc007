package provender.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.Map;
import provender.sync.JournalStore.Position;

/** Reads request bodies; numbers keep their digits, a key that stands twice is refused. */
final class Json {
  private static final JsonMapper READER =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private Json() {}

  static JsonNode object(String body) {
    try {
      JsonNode node = READER.readTree(body);
      if (node.isObject()) {
        return node;
      }
    } catch (JsonProcessingException broken) {
      throw Problem.badRequest("this is not JSON", "body", "a JSON object (RFC 8259)");
    }
    throw Problem.badRequest("this is no JSON object", "body", "a JSON object (RFC 8259)");
  }

  static Map<?, ?> map(String body) {
    return READER.convertValue(object(body), Map.class);
  }

  static String hint(String tank, long head) {
    return READER.createObjectNode().put("tank", tank).put("head", head).toString();
  }

  /** Every answer about a journal ends with where it stands. */
  static ObjectNode ended(ObjectNode answer, Position position) {
    return answer
        .put("head", position.head())
        .put("epoch", position.epoch())
        .put("serverTime", Instant.now().toString());
  }
}
