/** @import { Desk, Entry, Fish, Row } from "../types.js" */

/** @typedef {{ day: number, cm?: number, errorCm?: number, grams?: number, by: string }} Size one measuring */
/** @typedef {{ day: number, value: number, low: number, high: number, weighed: boolean }} Mass one measuring as mass */
/** @typedef {{ food: string, ate: number, refused: number, lastDay: number }} Taste */
/** @typedef {{ days: number, gainCm: number, errorCm: number, shows: boolean, expectedCm?: number }} Grown between the first and the last length */

const DAY = 86_400_000;
const leastDaysApart = 14;
const nearestDays = 30;

/** @param {string} happenedAt local time with offset @returns {number} epoch day where the tank stands */
export const dayOf = (happenedAt) => Math.floor(Date.parse(`${happenedAt.slice(0, 10)}T00:00:00Z`) / DAY);

/** Every measuring in what was noted of a fish, oldest first. @param {Entry[]} entries @returns {Size[]} */
export function sizes(entries) {
  return entries.flatMap(({ kind, by, happenedAt, body }) => {
    const day = dayOf(happenedAt);
    if (kind === "observation" && body.saw === "length") return [{ day, by, cm: body.cm, errorCm: body.errorCm }];
    if (kind === "observation" && body.saw === "weight") return [{ day, by, grams: body.grams }];
    const { lengthCm, lengthErrorCm, weightGrams, measuredOn } = (kind === "record" && body.set) || {};
    const on = measuredOn ? dayOf(measuredOn) : day;
    return [...(lengthCm ? [{ day: on, by, cm: lengthCm, errorCm: lengthErrorCm }] : []), ...(weightGrams ? [{ day: on, by, grams: weightGrams }] : [])];
  }).sort((a, b) => a.day - b.day);
}

/**
 * The length-weight relation of a fish: of its species, else of the family its keeper named.
 * @param {Desk} desk @param {Fish} fish @param {Entry[]} entries
 * @returns {Record<string, unknown> | null} as the calculations take it
 */
export function relationOf(desk, fish, entries) {
  if (desk.reference.species.has(fish.species)) return { species: fish.species };
  const family = entries.findLast(({ kind, body }) => kind === "record" && body.set?.family)?.body.set.family;
  const row = desk.reference.families.get(family);
  return row ? { a: row.lwr_a, b: row.lwr_b } : null;
}

/** What sizes amount to in grams; a length through its relation, with the error it was read with, unless it was weighed on that day. @param {Desk} desk @param {Size[]} all @param {Record<string, unknown> | null} relation @returns {Promise<Mass[]>} */
export async function masses(desk, all, relation) {
  const byEye = Number(desk.reference.constants.get("glass_length_error_cm")?.value);
  const weighed = new Set(all.flatMap(({ day, grams }) => (grams === undefined ? [] : [day])));
  const found = await Promise.all(all.map(async ({ day, cm, errorCm = byEye, grams }) => {
    if (grams !== undefined) return [{ day, value: grams, low: grams, high: grams, weighed: true }];
    if (cm === undefined || weighed.has(day) || !relation) return [];
    const { weightGrams } = await desk.calc("weight", { ...relation, lengthCm: cm, lengthErrorCm: Math.min(errorCm, cm) });
    return weightGrams ? [{ day, ...weightGrams, weighed: false }] : [];
  }));
  return found.flat();
}

/**
 * How much longer a fish has become, and whether measuring could show it at all.
 * @param {Desk} desk @param {Size[]} all @param {Row | undefined} species
 * @returns {Promise<Grown | null>} null without two lengths far enough apart
 */
export async function grown(desk, all, species) {
  const byEye = Number(desk.reference.constants.get("glass_length_error_cm")?.value);
  const lengths = all.filter(({ cm }) => cm !== undefined);
  const [first, last] = [lengths[0], lengths.at(-1)];
  if (!first?.cm || !last?.cm || last.day - first.day < leastDaysApart) return null;
  const days = last.day - first.day;
  const gainCm = last.cm - first.cm;
  const errorCm = Math.hypot(first.errorCm ?? byEye, last.errorCm ?? byEye);
  const expected = species?.growth_k_per_year && first.cm < species.growth_linf_cm ? await desk.calc("growth", {
    lInfCm: species.growth_linf_cm, kPerYear: species.growth_k_per_year, a: species.lwr_a, b: species.lwr_b, lengthCm: first.cm, days }) : null;
  return { days, gainCm, errorCm, shows: Math.abs(gainCm) > errorCm,
    ...(expected?.lengthCm ? { expectedCm: expected.lengthCm - first.cm } : {}) };
}

/** The last weighing held against a length of about the same time. @param {Desk} desk @param {Size[]} all @param {Record<string, unknown> | null} relation */
export async function condition(desk, all, relation) {
  const weighed = all.findLast(({ grams }) => grams !== undefined);
  const length = weighed && all.filter(({ cm, day }) => cm !== undefined && Math.abs(day - weighed.day) <= nearestDays)
    .sort((a, b) => Math.abs(a.day - weighed.day) - Math.abs(b.day - weighed.day))[0];
  if (!weighed?.grams || !length?.cm || !relation) return null;
  const { relativeCondition, why } = await desk.calc("weight", { ...relation, lengthCm: length.cm, weighedGrams: weighed.grams });
  return relativeCondition ? { day: weighed.day, part: relativeCondition, why } : null;
}

/** What people saw it take and refuse, most often seen first. @param {Entry[]} entries @param {{ day: number, foods: string[] }[]} refusals at feedings @returns {Taste[]} */
export function tastes(entries, refusals) {
  /** @type {Map<string, Taste>} */
  const found = new Map();
  const add = (/** @type {string} */ food, /** @type {"ate" | "refused"} */ saw, /** @type {number} */ day) => {
    const taste = found.get(food) ?? { food, ate: 0, refused: 0, lastDay: day };
    found.set(food, { ...taste, [saw]: taste[saw] + 1, lastDay: Math.max(day, taste.lastDay) });
  };
  for (const { kind, body, happenedAt } of entries) {
    if (kind === "observation" && (body.saw === "ate" || body.saw === "refused")) add(body.food ?? "", body.saw, dayOf(happenedAt));
  }
  for (const { day, foods } of refusals) for (const food of foods) add(food, "refused", day);
  return [...found.values()].sort((a, b) => b.ate + b.refused - a.ate - a.refused || b.lastDay - a.lastDay);
}
