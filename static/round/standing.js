/** @import { AutoFeeder, FoodGrams, Keeper, Refill, Standing, TankRow, Today } from "../types.js" */

const MILLIS_PER_DAY = 86_400_000;
/** Who goes away for a weekend is not worth a word. */
const quietDays = 3;
/** A hopper that may be empty before the next visit of an ordinary round is refilled on this one. */
const refillWithinDays = 3;
/** As on the other pages: a week under four fifths of the ration is no accident. */
const underfed = 0.8;
const week = 7;

/**
 * How one tank stands for whoever has many to see to.
 * @param {TankRow} row
 * @param {Today} today
 * @param {number} unsent
 * @param {number} now millis since 1970
 * @returns {Standing}
 */
export function standingOf(row, today, unsent, now) {
  const { day, lastFeeding, findings, days, ration } = today;
  const weights = { high: 0, medium: 0, low: 0 };
  for (const { severity } of findings) weights[severity] += 1;
  const refills = refillsOf(today.feeders, day);
  const sum = days.filter((one) => one.day < day).slice(-week)
    .reduce((all, { dueKj, givenKj }) => ({ due: all.due + dueKj, given: all.given + givenKj }), { due: 0, given: 0 });
  /** @type {Standing} */
  const standing = {
    id: row.id, name: row.name, household: row.household, day, weights, findings, refills, unsent,
    daysSinceFed: lastFeeding ? day - lastFeeding.day : null,
    today: part(ration.givenKj.value, ration.dueKj.value),
    week: part(sum.given, sum.due),
    conflicts: today.conflicts.length,
    quiet: quietOf(row.keepers ?? [], now),
    reasons: [], bring: [],
    foods: new Map(today.ownFoods.map(({ key, name }) => [key, name])),
    about: new Map(today.feeders.map(({ key, name }) => [key, name])),
  };
  standing.reasons = reasonsOf(standing);
  standing.bring = bringOf(standing);
  return standing;
}

/** @param {number} given @param {number} due */
const part = (given, due) => (due > 0 ? given / due : null);

/** When each running feeder may have dropped its last, at the earliest, soonest first. @param {AutoFeeder[]} feeders @param {number} day @returns {Refill[]} */
function refillsOf(feeders, day) {
  return feeders.flatMap(({ name, running, hopperDays, hopperGrams, levelGrams, mix }) => {
    if (!running || !hopperDays) return [];
    const room = Math.max(0, (hopperGrams ?? 0) - (levelGrams?.value ?? 0));
    return [{ feeder: name, day: day + Math.max(0, Math.floor(hopperDays.low)), missing: mix.map(({ food, share }) => ({ food, grams: room * share })) }];
  }).sort((one, other) => one.day - other.day);
}

/** @param {Keeper[]} keepers @param {number} now */
function quietOf(keepers, now) {
  return keepers.flatMap(({ name, seenAt }) => {
    const days = seenAt ? Math.floor((now - Date.parse(seenAt)) / MILLIS_PER_DAY) : 0;
    return days >= quietDays ? [{ name, days }] : [];
  }).sort((one, other) => other.days - one.days);
}

/** @param {Standing} standing @returns {string[]} */
function reasonsOf({ weights, conflicts, daysSinceFed, week: met, refills, day }) {
  return [
    ...(weights.high ? ["high"] : []),
    ...(conflicts ? ["conflicts"] : []),
    ...(daysSinceFed !== 0 ? ["fed"] : []),
    ...(met !== null && met < underfed ? ["underfed"] : []),
    ...(refills.some((refill) => isSoon(refill, day)) ? ["refill"] : []),
  ];
}

/** @param {Refill} refill @param {number} day */
const isSoon = (refill, day) => refill.day - day <= refillWithinDays;

/** The first food that each finding offers, the most of it that any asks for, and what the hoppers can take. @param {Standing} standing */
function bringOf({ findings, refills, day }) {
  /** @type {Map<string, number>} */
  const offered = new Map();
  for (const { offer: [first] } of findings) {
    if (first) offered.set(first.food, Math.max(offered.get(first.food) ?? 0, first.grams));
  }
  return added([...offered].map(([food, grams]) => ({ food, grams })),
    refills.filter((refill) => isSoon(refill, day)).flatMap(({ missing }) => missing));
}

/** @param {FoodGrams[][]} lists @returns {FoodGrams[]} each food once, with all of its grams */
export function added(...lists) {
  /** @type {Map<string, number>} */
  const sums = new Map();
  for (const { food, grams } of lists.flat()) if (grams > 0) sums.set(food, (sums.get(food) ?? 0) + grams);
  return [...sums].map(([food, grams]) => ({ food, grams })).sort((one, other) => other.grams - one.grams);
}

/** The ways to order a round; a tank that says nothing on the matter comes last. @type {Record<string, (one: Standing, other: Standing) => number>} */
const orders = {
  weight: (one, other) => weight(other) - weight(one),
  fed: (one, other) => (other.daysSinceFed ?? Infinity) - (one.daysSinceFed ?? Infinity) || 0,
  ration: (one, other) => (one.week ?? Infinity) - (other.week ?? Infinity) || 0,
  refill: (one, other) => (one.refills[0]?.day ?? Infinity) - (other.refills[0]?.day ?? Infinity) || 0,
  name: () => 0,
};
export const orderNames = Object.keys(orders);

/** One heavy finding outweighs any number of lighter ones. @param {Standing} standing */
const weight = ({ weights: { high, medium, low } }) => (high * 1000 + medium) * 1000 + low;

/** @param {Standing[]} standings @param {string} order @param {boolean} onlyDue */
export function inOrder(standings, order, onlyDue) {
  return standings.filter(({ reasons }) => !onlyDue || reasons.length > 0)
    .sort((one, other) => orders[order](one, other) || one.name.localeCompare(other.name));
}
