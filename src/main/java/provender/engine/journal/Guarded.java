package provender.engine.journal;

/** A field that can harm, and the place of the change that stands there: whoever changes it says which they had seen. */
public record Guarded(String record, String key, String field, double place) {}
