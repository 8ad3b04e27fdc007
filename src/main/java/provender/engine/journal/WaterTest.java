package provender.engine.journal;

import provender.engine.quantity.Moment;

/** One test of the water; what was not tested is NaN. */
public record WaterTest(Moment at, double temperatureC) {}
