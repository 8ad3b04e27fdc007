import { has, t, written } from "../text/index.js";
import { measureName } from "../ui/names.js";
/** @import { Food, Glance } from "../types.js" */

/** @typedef {{ name: string, grams: number, basis: "weighed" | "assumed", size?: string }} MeasureChoice one of what people measure with */
/** @typedef {{ food: string, measure: MeasureChoice, count: number, grams: number, supplements: string[], fish: string | null }} TrayItem */
/** @typedef {{ leftoverGrams: number | null, refusedBy: string[], note: string, minutesAgo: number, then: number | null, picture: Blob | null }} TrayExtras */
/** @typedef {{ key: string, name: string }} NamedKey */

/** @param {{ grams: number }[]} items all that goes in */
export const gramsOf = (items) => items.reduce((sum, item) => sum + item.grams, 0);

export const minutesInDay = 1440;
const closeness = 100;

/** Of most feedings nothing else is said. @returns {TrayExtras} */
export const nothingMore = () => ({ leftoverGrams: null, refusedBy: [], note: "", minutesAgo: 0, then: null, picture: null });

/**
 * The measures of a food: the tank's own first, weighed before assumed, then the usual household one.
 * @param {Food} food
 * @param {Glance} today
 * @returns {MeasureChoice[]}
 */
export function measuresOf(food, today) {
  const own = today.measures.filter((measure) => measure.food === food.key)
    .map(({ name, grams, basis }) => ({ name, grams, basis }))
    .sort((a, b) => Number(b.basis === "weighed") - Number(a.basis === "weighed"));
  const household = food.household_measure && food.measure_g ? [householdOf(food)] : [];
  const known = [...own, ...household.filter(({ name }) => !own.some((measure) => measure.name === name))];
  return /** @type {MeasureChoice[]} */ (known.length ? known : [{ name: "g", grams: 1, basis: "weighed" }]);
}

/** The usual measure from the table, "1 sheet, about so big": its name, and its size as a note. @param {Food} food */
function householdOf({ household_measure: text, measure_g: grams }) {
  const [name, ...size] = text.replace(/^1 /, "").split(", ");
  return { name, grams, basis: "assumed", size: size.join(", ") };
}

/**
 * A food as it would go in with one tap: as much as last time, else one measure.
 * @param {Food} food
 * @param {Glance} today
 * @returns {TrayItem}
 */
export function usualItem(food, today) {
  const measures = measuresOf(food, today);
  const last = lastOf(food.key, measures, today);
  const measure = measures.find(({ name }) => name === last?.measure) ?? measures[0];
  const count = last?.count ?? (measure.name === "g" ? 5 : 1);
  return { food: food.key, measure, count, grams: count * measure.grams, supplements: [], fish: null };
}

/** How it went in the last time, if that measure is still known. @param {string} food @param {MeasureChoice[]} measures @param {Glance} today */
function lastOf(food, measures, { feedings }) {
  for (const { items } of feedings) {
    for (const item of items) if (item.food === food && item.count && measures.some(({ name }) => name === item.measure)) return item;
  }
}

/**
 * Food keys with those first that the tank gets at this time of day; the usual foods keep their order behind.
 * @param {Glance} today
 */
export function foodsForNow(today) {
  const weight = new Map(today.tank.usualFoods.map((key, place) => [key, 0.3 - 0.01 * place]));
  for (const { day, minute, items } of today.feedings) {
    const apart = Math.abs(minute - today.minute);
    const away = day === today.day ? minutesInDay : Math.min(apart, minutesInDay - apart);
    for (const { food } of items) weight.set(food, (weight.get(food) ?? 0) + Math.exp(-((away / closeness) ** 2)));
  }
  return [...weight].sort((a, b) => b[1] - a[1]).map(([key]) => key);
}

/**
 * "2 cubes": the count before the measure, in halves and quarters as people say them.
 * @param {number} count
 * @param {string} name
 */
export function countOf(count, name) {
  return name === "g" ? t("measure.grams", { n: written(count) }) : t("measure.count", { count, n: spokenCount(count), name: measureName(name) });
}

/** @param {number} count */
export function spokenCount(count) {
  const key = `count.${count % 1}`;
  if (!has(key)) return written(count);
  return count < 1 ? t(key) : `${Math.floor(count)}${t(key)}`;
}
