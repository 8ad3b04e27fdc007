/** The exports of the engine, which the build makes from Java. */
import type { Bench, ReferenceTables } from "../types.js";

export function open(reference: ReferenceTables): Bench;
/** How many days back a day is reckoned from. */
export function lookBackDays(): number;
