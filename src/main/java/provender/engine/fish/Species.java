package provender.engine.fish;

import org.jspecify.annotations.Nullable;

/**
 * A species as the reference tables know it.
 *
 * @param hardFoodGapDays longest time without something hard, 0 when its mouth needs none
 * @param growth null where nobody has published how it grows
 */
public record Species(
    String name,
    String commonName,
    String family,
    String guild,
    double maxLengthCm,
    LengthWeight lengthWeight,
    int hardFoodGapDays,
    String hardFoodSource,
    @Nullable GrowthCurve growth) {}
