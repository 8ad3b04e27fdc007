package provender.sync;

import com.fasterxml.jackson.databind.JsonNode;

/** What the journal itself must know of an entry, with what it says and the text of it that is kept. */
public record Envelope(
    String id, String device, long deviceSeq, String kind, String happenedAt, JsonNode written, String text) {}
