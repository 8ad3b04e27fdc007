package provender.engine.fish;

/**
 * A species as the reference tables know it.
 *
 * @param hardFoodGapDays longest time without something hard, 0 when its mouth needs none
 */
public record Species(
    String name,
    String commonName,
    String family,
    String guild,
    double maxLengthCm,
    LengthWeight lengthWeight,
    int hardFoodGapDays,
    String hardFoodSource) {}
