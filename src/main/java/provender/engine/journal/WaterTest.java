package provender.engine.journal;

import provender.engine.quantity.Moment;

/** One test of the water, in mg/L of the ion, °C, degrees of carbonate hardness and g/kg; what was not tested is NaN. */
public record WaterTest(
    Moment at,
    double temperatureC,
    double nitrateMgL,
    double phosphateMgL,
    double ammoniaMgL,
    double alkalinityDkh,
    double salinityPpt) {}
