package provender.engine.journal;

import provender.engine.quantity.Moment;

/** Water taken out and replaced; what the new water brings is 0 where nobody tested it. */
public record Exchange(Moment at, double litres, double sourceNitrateMgL, double sourcePhosphateMgL) {}
