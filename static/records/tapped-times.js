/** @import { Entry } from "../types.js" */
import { isoOf } from "../text/local-time.js";

const DAY_MILLIS = 86_400_000;
const TAPPED_WITHIN_MILLIS = 2 * 60_000;
/** Kinds that say what happened at a moment; the others only say what is changed. */
const MOMENTS = ["feeding", "observation", "water-test", "exchange", "dosing", "weighing", "hopper-fill"];

/**
 * What was tapped on this phone within the last day and carries the time of its clock: whose time was given by hand, or set
 * right already, is left out.
 * @param {Entry[]} entries of one tank
 * @param {string} device
 * @param {{ now: number, followsSince: string | null }} clock the phone's own
 * @returns {Entry[]}
 */
export function tappedToday(entries, device, { now, followsSince }) {
  const retimed = new Set(entries.filter(({ kind, body }) => kind === "amendment" && "happenedAt" in (body.set ?? {})).map(({ body }) => body.entry));
  const until = followsSince ? Date.parse(followsSince) : Infinity;
  return entries.filter((entry) => {
    const recorded = Date.parse(entry.recordedAt);
    return entry.device === device && MOMENTS.includes(entry.kind) && !retimed.has(entry.id) && recorded < until
      && Math.abs(now - recorded) < DAY_MILLIS && Math.abs(Date.parse(entry.happenedAt) - recorded) < TAPPED_WITHIN_MILLIS;
  });
}

/** @param {Entry} entry @param {number} offset milliseconds @returns {string} its time by the other clock */
export function shifted({ happenedAt, zone }, offset) {
  return isoOf(Date.parse(happenedAt) + offset, zone);
}
