package provender.people;

/** A keeper's place at one tank: which household it belongs to, and in what role. */
public record Seat(String household, String tank, String tankName, String zone, Role role) {}
