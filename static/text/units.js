/** What people measure with. The journal and the engine know metric units only; this is where they are turned. */

const kept = "provender.units";
export const unitSystems = ["metric", "us"];

/** @typedef {{ unit: string, factor: number, offset?: number }} Unit shown = metric × factor + offset */

/** @type {Record<string, Record<string, Unit>>} */
const shownAs = {
  metric: {
    length: { unit: "cm", factor: 1 },
    volume: { unit: "L", factor: 1 },
    temperature: { unit: "°C", factor: 1 },
    mass: { unit: "g", factor: 1 },
  },
  // 1 in = 2.54 cm exactly; 1 US gallon = 231 in³ exactly. Food and fish are weighed in grams everywhere.
  us: {
    length: { unit: "in", factor: 1 / 2.54 },
    volume: { unit: "gal", factor: 1 / 3.785411784 },
    temperature: { unit: "°F", factor: 1.8, offset: 32 },
    mass: { unit: "g", factor: 1 },
  },
};

/** How this phone shows units; never sent. */
export function units() {
  const chosen = localStorage.getItem(kept) ?? "metric";
  return unitSystems.includes(chosen) ? chosen : "metric";
}

/** @param {string} chosen */
export const chooseUnits = (chosen) => localStorage.setItem(kept, chosen);

/** @param {string} quantity such as "length" @returns {string} */
export const unitOf = (quantity) => shownAs[units()][quantity].unit;

/** @param {string} quantity @param {number} metric */
export function shown(quantity, metric) {
  const { factor, offset = 0 } = shownAs[units()][quantity];
  return metric * factor + offset;
}

/** @param {string} quantity @param {number} entered in the units on screen */
export function metric(quantity, entered) {
  const { factor, offset = 0 } = shownAs[units()][quantity];
  return (entered - offset) / factor;
}

/**
 * A number as people type it: a comma or a point before the decimals, spaces between thousands. NaN when it is none.
 * @param {string} text
 */
export function typed(text) {
  const tidy = text.trim().replaceAll(/[\s\u202f\u00a0]/g, "").replace(",", ".");
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(tidy) ? Number(tidy) : NaN;
}
