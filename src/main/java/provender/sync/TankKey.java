package provender.sync;

/** A tank's journal, named by the household it belongs to and the tank. */
public record TankKey(String household, String tank) {}
