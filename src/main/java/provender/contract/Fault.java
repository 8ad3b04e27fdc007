package provender.contract;

/** A field that cannot be used as it is, and what it takes instead. */
public record Fault(String field, String takes) {}
