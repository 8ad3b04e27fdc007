import { spokenLanguage } from "../text/numbers.js";

const STEPS = /** @type {const} */ ([["day", 86_400_000], ["hour", 3_600_000], ["minute", 60_000]]);

/** A span of time in its one or two largest units, such as 2 hours 3 minutes. @param {number} millis */
export function spanOf(millis) {
  let left = Math.round(millis / 60_000) * 60_000;
  const parts = [];
  for (const [unit, size] of STEPS) {
    const count = Math.floor(left / size);
    left -= count * size;
    if (count > 0 && parts.length < 2) parts.push(new Intl.NumberFormat(spokenLanguage(), { style: "unit", unit, unitDisplay: "long" }).format(count));
  }
  return parts.join(" ") || new Intl.NumberFormat(spokenLanguage(), { style: "unit", unit: "minute", unitDisplay: "long" }).format(0);
}

/** How long ago a moment was, by this phone's clock. @param {string} iso */
export function agoOf(iso) {
  const since = Date.now() - Date.parse(iso);
  const [unit, size] = STEPS.find(([, millis]) => Math.abs(since) >= millis) ?? STEPS[2];
  return new Intl.RelativeTimeFormat(spokenLanguage(), { numeric: "auto" }).format(-Math.round(since / size), unit);
}
