package provender.sync;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Iterator;
import java.util.Map;

/**
 * A number of 32 bits for an entry in its place, the same on the phone (static/sync/checksum.js): FNV-1a over what the JSON
 * means, not over how it is spelt. A page's checksum is the sum over its entries modulo 2^32, so their order does not matter.
 */
public final class Checksum {
  public static final long MODULUS = 1L << 32;

  private static final String PLACE = "seq";
  private static final String ARRIVAL = "receivedAt";
  private static final int OFFSET = 0x811C9DC5;
  private static final int PRIME = 0x01000193;

  private Checksum() {}

  /** The checksum of an entry in its place, whatever place or arrival stands in its text. */
  public static long of(JsonNode entry, long seq) {
    int sum = member(PLACE, number(seq));
    Iterator<Map.Entry<String, JsonNode>> fields = entry.fields();
    while (fields.hasNext()) {
      Map.Entry<String, JsonNode> field = fields.next();
      if (!field.getKey().equals(PLACE) && !field.getKey().equals(ARRIVAL)) {
        sum += member(field.getKey(), value(field.getValue()));
      }
    }
    return Integer.toUnsignedLong(mix(mix(OFFSET, 'o'), sum));
  }

  public static long sum(long one, long other) {
    return (one + other) % MODULUS;
  }

  private static int value(JsonNode value) {
    if (value.isTextual()) {
      return text('s', value.asText());
    }
    if (value.isNumber()) {
      return number(value.doubleValue());
    }
    if (value.isArray()) {
      int hash = mix(OFFSET, 'a');
      for (JsonNode item : value) {
        hash = mix(hash, value(item));
      }
      return hash;
    }
    if (value.isObject()) {
      int sum = 0;
      Iterator<Map.Entry<String, JsonNode>> fields = value.fields();
      while (fields.hasNext()) {
        Map.Entry<String, JsonNode> field = fields.next();
        sum += member(field.getKey(), value(field.getValue()));
      }
      return mix(mix(OFFSET, 'o'), sum);
    }
    return mix(OFFSET, value.isNull() ? 'z' : value.asBoolean() ? 't' : 'f');
  }

  private static int member(String name, int value) {
    return mix(text('k', name), value);
  }

  /** Over UTF-16 units, which need no decoding on a phone. */
  private static int text(char tag, String text) {
    int hash = mix(OFFSET, tag);
    for (int i = 0; i < text.length(); i++) {
      hash = mix(hash, text.charAt(i));
    }
    return hash;
  }

  private static int number(double number) {
    long bits = Double.doubleToLongBits(number == 0 ? 0 : number);
    return mix(mix(mix(OFFSET, 'n'), (int) (bits >>> 32)), (int) bits);
  }

  private static int mix(int hash, int word) {
    return (hash ^ word) * PRIME;
  }
}
