package provender.web;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import provender.people.Households.Fault;
import provender.people.Role;

/** Reads the fields of a request one by one, and names the one that cannot be used; fields nobody asked for are passed over. */
final class Asked {
  private static final int LONGEST = 200;
  /** Not every database keeps it in a text. */
  private static final char NO_CHARACTER = '\0';

  private Asked() {}

  static String text(JsonNode asked, String field) {
    String text = asked.path(field).isTextual() ? asked.path(field).asText() : "";
    if (text.isBlank() || text.length() > LONGEST || text.indexOf(NO_CHARACTER) >= 0) {
      throw Problem.badRequest("a field is missing", field, "a text of 1 to 200 characters");
    }
    return text;
  }

  /** What a phone calls itself, if it does. */
  static String device(JsonNode asked) {
    return asked.path("device").asText("");
  }

  static Role role(JsonNode asked) {
    Role role = Role.named(text(asked, "role"));
    if (role == null) {
      throw Problem.badRequest("a field cannot be used", "role", "guest, keeper or steward");
    }
    return role;
  }

  static String zone(JsonNode asked) {
    try {
      return ZoneId.of(text(asked, "zone")).getId();
    } catch (DateTimeException unknown) {
      throw Problem.badRequest("a field cannot be used", "zone", "an IANA time zone such as Europe/Berlin");
    }
  }

  static List<Map<String, String>> errors(List<Fault> faults) {
    return faults.stream().map(fault -> Map.of("field", fault.field(), "takes", fault.takes())).toList();
  }
}
