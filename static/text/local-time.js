/** Local times with their offset, as the journal keeps them. */

const MINUTE = 60_000;
const DAY = 86_400_000;

/** Formatters by zone; making one is dear. @type {Map<string, Intl.DateTimeFormat>} */
const offsetsOf = new Map();

/**
 * @param {number} millis since 1970
 * @param {string} zone IANA name
 * @returns {string} such as 2026-11-25T08:10:00+01:00
 */
export function isoOf(millis, zone) {
  const offset = offsetMinutes(millis, zone);
  return new Date(millis + offset * MINUTE).toISOString().slice(0, 19) + spoken(offset);
}

/**
 * A minute of a local day. Where clocks leap over it, the moment as far after the leap.
 * @param {number} day epoch day
 * @param {number} minute
 * @param {string} zone
 */
export function isoAt(day, minute, zone) {
  const local = day * DAY + minute * MINUTE;
  const nearly = local - offsetMinutes(local, zone) * MINUTE;
  return isoOf(local - offsetMinutes(nearly, zone) * MINUTE, zone);
}

/** @param {number} millis @param {string} zone */
function offsetMinutes(millis, zone) {
  let offsets = offsetsOf.get(zone);
  if (!offsets) offsetsOf.set(zone, offsets = new Intl.DateTimeFormat("en", { timeZone: zone, timeZoneName: "longOffset" }));
  const parts = offsets.formatToParts(millis);
  const name = parts.find(({ type }) => type === "timeZoneName")?.value ?? "GMT";
  const [, sign, hours, minutes] = /^GMT([+-])(\d\d):(\d\d)/.exec(name) ?? ["", "+", "0", "0"];
  return (Number(hours) * 60 + Number(minutes)) * (sign === "-" ? -1 : 1);
}

/** @param {number} offset minutes */
function spoken(offset) {
  const abs = Math.abs(offset);
  const two = (/** @type {number} */ n) => String(n).padStart(2, "0");
  return `${offset < 0 ? "-" : "+"}${two(Math.floor(abs / 60))}:${two(abs % 60)}`;
}
