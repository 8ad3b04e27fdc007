package provender.engine.intake;

/** Someone saw a fish take a food, or turn from it; an empty food means whatever was offered. */
public record Sighting(String fish, String food, boolean ate, int epochDay) {}
