package provender.sync;

import com.fasterxml.jackson.databind.JsonNode;

/** What the journal itself must know of an entry, with the text it came in. */
public record Envelope(
    String id, String device, long deviceSeq, String kind, String happenedAt, JsonNode written) {}
