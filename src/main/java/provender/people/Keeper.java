package provender.people;

/** Someone who signs in. */
public record Keeper(String id, String name) {}
