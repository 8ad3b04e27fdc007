package provender.engine.reference;

import provender.engine.node.Node;
import provender.engine.quantity.Range;
import provender.engine.ration.GrowthCost;
import provender.engine.ration.Model;
import provender.engine.ration.PublishedModel;

/** Reads one row of the table of published ration lines. */
final class PublishedModels {
  private PublishedModels() {}

  static PublishedModel read(Node row, String source) {
    double coefficient = row.number("coefficient_kj", Double.NaN);
    Range band =
        Range.around(
            row.number("coefficient_low_kj", coefficient), coefficient, row.number("coefficient_high_kj", coefficient));
    Model line =
        new Model(
            band,
            row.number("mass_exponent", Double.NaN),
            row.number("temperature_slope", 0),
            row.number("reference_c", Double.NaN),
            source);
    return new PublishedModel(
        row.text("key", ""),
        line,
        row.text("energy_basis", "").equals("gross"),
        row.number("min_c", Double.NaN),
        row.number("max_c", Double.NaN),
        new PublishedModel.Gain(
            row.number("gain_a", Double.NaN), row.number("gain_b", Double.NaN), row.number("gain_slope", 0)),
        new GrowthCost(
            row.number("growth_cost_kj_per_g", Double.NaN),
            row.number("body_energy_a", Double.NaN),
            row.number("body_energy_b", Double.NaN),
            row.number("growth_efficiency", Double.NaN)),
        new PublishedModel.Protein(
            row.number("protein_g", Double.NaN),
            row.number("protein_exponent", Double.NaN),
            row.number("protein_per_gain_g", Double.NaN)));
  }
}
