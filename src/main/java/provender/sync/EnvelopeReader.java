package provender.sync;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import provender.sync.Answer.Fault;

/** Reads an entry's envelope and names every field that cannot be used; the body's fields are the kind's own affair. */
final class EnvelopeReader {
  private static final Pattern UUID =
      Pattern.compile("[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}");
  private static final Pattern KIND = Pattern.compile("[a-z][a-z-]{0,39}");

  private final JsonNode written;
  private final List<Fault> faults = new ArrayList<>();

  EnvelopeReader(JsonNode written) {
    this.written = written;
  }

  Envelope read(String tank, Predicate<String> mayRecord) {
    String id = matching("id", UUID, "a UUID in lower case, version 7 by preference");
    String device = matching("device", UUID, "a UUID in lower case");
    String kind = matching("kind", KIND, "a word of lower-case letters and hyphens, at most 40");
    long deviceSeq = wholeFromOne("deviceSeq");
    wholeFromOne("v");
    if (!written.path("tank").asText().equals(tank)) {
      faults.add(new Fault("tank", "the tank it is sent to, " + tank));
    }
    if (!written.path("by").isTextual() || !mayRecord.test(written.path("by").asText())) {
      faults.add(new Fault("by", "the id of a keeper of this household"));
    }
    if (!written.path("body").isObject()) {
      faults.add(new Fault("body", "an object"));
    }
    return new Envelope(id, device, deviceSeq, kind, happenedAt(), written, written.toString());
  }

  List<Fault> faults() {
    return faults;
  }

  private String matching(String field, Pattern pattern, String takes) {
    String text = written.path(field).isTextual() ? written.path(field).asText() : "";
    if (!pattern.matcher(text).matches()) {
      faults.add(new Fault(field, takes));
    }
    return text;
  }

  private long wholeFromOne(String field) {
    JsonNode number = written.path(field);
    if (!number.isIntegralNumber() || !number.canConvertToLong() || number.asLong() < 1) {
      faults.add(new Fault(field, "a whole number from 1"));
      return 0;
    }
    return number.asLong();
  }

  private String happenedAt() {
    String text = written.path("happenedAt").asText();
    try {
      if (text.length() <= 40) {
        OffsetDateTime.parse(text);
        return text;
      }
    } catch (DateTimeException unreadable) {
      // Named below, like a text that is too long.
    }
    faults.add(new Fault("happenedAt", "a time with its offset, such as 2026-11-25T08:10:00+01:00"));
    return "";
  }
}
