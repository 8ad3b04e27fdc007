/** Numbers, times and days as people say them, with no more digits than are known. */

const NARROW_SPACE = "\u202f";
const MILLIS_PER_DAY = 86_400_000;
const MINUTES_PER_DAY = 1440;

let lang = "en";
/** @type {() => "h23" | "h12"} */
let hourCycle = () => "h23";

/** The language that is spoken. */
export const spokenLanguage = () => lang;

/** Formatters by what they do: making one costs more than a whole page of using it. @type {Map<string, any>} */
const formatters = new Map();

/** @param {string} language such as en or en-GB @param {() => string} [hours] h23 or h12, asked when a time is first told */
export function setLanguage(language, hours = () => "h23") {
  lang = language;
  hourCycle = /** @type {() => "h23" | "h12"} */ (hours);
  formatters.clear();
}

/**
 * @template F
 * @param {string} name
 * @param {() => F} make
 * @returns {F}
 */
function formatter(name, make) {
  if (!formatters.has(name)) formatters.set(name, make());
  return formatters.get(name);
}

/** A number without unit: counts to the last one, anything else with three digits that count. @param {number} n */
export const plain = (n) => (Number.isInteger(n) ? formatter("whole", () => new Intl.NumberFormat(lang)).format(n) : digits(n, 3));

/** A number as it would be typed: the language's decimal sign, nothing between thousands, no digit lost that anyone enters. @param {number} n */
export function written(n) {
  return formatter("written", () => new Intl.NumberFormat(lang, { useGrouping: false, maximumFractionDigits: 4 })).format(n);
}

/** A mass: two digits that count below ten grams, three above, kilograms from a thousand on. @param {number} n in grams */
export function grams(n) {
  return Math.abs(n) >= 1000 ? withUnit(digits(n / 1000, 3), "kg") : withUnit(digits(n, n < 10 ? 2 : 3), "g");
}

/** @param {number} n kilojoules */
export function kj(n) {
  return Math.abs(n) >= 10_000 ? withUnit(digits(n / 1000, 3), "MJ") : withUnit(digits(n, n < 10 ? 2 : 3), "kJ");
}

/** @param {number} share from 0 to 1 */
export function percent(share) {
  return withUnit(digits(share * 100, 2), "%");
}

/**
 * A span with both ends, or the one value when both would read the same.
 * @param {number} low
 * @param {number} high
 * @param {(n: number) => string} [say] how one end is said, with its unit
 */
export function range(low, high, say = rough) {
  const [from, to] = [say(low), say(high)];
  if (from === to) return to;
  const unit = to.includes(NARROW_SPACE) ? to.slice(to.indexOf(NARROW_SPACE)) : "";
  return `${unit && from.endsWith(unit) ? from.slice(0, -unit.length) : from}\u2013${to}`;
}

/** A value with its unit. @param {number} n @param {string} unit @param {number} [significant] */
export function figure(n, unit, significant = 3) {
  return unit ? withUnit(digits(n, significant), unit) : digits(n, significant);
}

/** The time of day of a minute of the local day, as people here tell it. @param {number} minute */
export function clock(minute) {
  const within = ((minute % MINUTES_PER_DAY) + MINUTES_PER_DAY) % MINUTES_PER_DAY;
  return formatter("clock", () => timeOfDay(hourCycle())).format(within * 60_000);
}

/** @param {"h23" | "h12"} cycle */
function timeOfDay(cycle) {
  return new Intl.DateTimeFormat(lang, { hour: cycle === "h12" ? "numeric" : "2-digit", minute: "2-digit", hourCycle: cycle, timeZone: "UTC" });
}

/**
 * Today, yesterday, a weekday within the week around, else a date.
 * @param {number} epochDay
 * @param {number} today epoch day
 */
export function dayName(epochDay, today) {
  const away = epochDay - today;
  if (Math.abs(away) <= 1) return formatter("near", () => new Intl.RelativeTimeFormat(lang, { numeric: "auto" })).format(away, "day");
  const form = Math.abs(away) < 7
    ? { weekday: /** @type {const} */ ("long") }
    : { day: /** @type {const} */ ("numeric"), month: /** @type {const} */ ("short"), ...yearUnlessNear(away) };
  return formatter(JSON.stringify(form), () => new Intl.DateTimeFormat(lang, { ...form, timeZone: "UTC" })).format(epochDay * MILLIS_PER_DAY);
}

/** Date and time of a moment, by the clock of this phone. @param {string} iso */
export function moment(iso) {
  return formatter("moment", () => new Intl.DateTimeFormat(lang, { dateStyle: "medium", timeStyle: "short", hourCycle: hourCycle() })).format(new Date(iso));
}

/** @param {number} away */
function yearUnlessNear(away) {
  return Math.abs(away) > 300 ? { year: /** @type {const} */ ("numeric") } : {};
}

/** @param {number} n */
const rough = (n) => digits(n, 2);

/** @param {string} text @param {string} unit */
const withUnit = (text, unit) => text + NARROW_SPACE + unit;

/**
 * Rounded to the digits that count; whole parts are rounded too, so 1,234 with two digits is 1,200.
 * @param {number} n
 * @param {number} significant
 */
function digits(n, significant) {
  return formatter(`digits ${significant}`, () => new Intl.NumberFormat(lang, { maximumSignificantDigits: significant }))
    .format(n === 0 ? 0 : n);
}
