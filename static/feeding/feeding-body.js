/** @import { Feeding, FeedingItem } from "../types.js" */
/** @import { Tray } from "./tray.js" */

/** What is recorded of a tray. Grams need no count beside them. @param {Tray} tray */
export function bodyOf({ items, extras: { leftoverGrams, refusedBy, note } }) {
  return {
    items: items.map(({ food, grams: mass, measure, count, supplements, fish }) => ({
      food, grams: mass,
      ...(measure.name === "g" ? {} : { measure: measure.name, count }),
      ...(supplements.length ? { supplements } : {}),
      ...(fish ? { fish } : {}),
    })),
    ...(leftoverGrams === null ? {} : { leftoverGrams }),
    ...(refusedBy.length ? { refusedBy } : {}),
    ...(note ? { note } : {}),
  };
}

/** An amount is shown with two digits that count, and "all of it" is typed as it is shown. */
const SHOWN_WITHIN = 1.05;

/** @param {number} leftover @param {number} given both in grams */
export const isMoreThanGiven = (leftover, given) => leftover > given * SHOWN_WITHIN;

/** The same once more; what was left over or refused then is not. @param {Feeding} feeding */
export function onceMore({ items }) {
  return { items: items.map((item) => withAmount(item, amountOf(item))) };
}

/** In the measure it was given with, else in grams. @param {FeedingItem} item */
export const amountOf = ({ grams, measure, count }) => (measure && count ? count : grams);

/** The same food with another amount. @param {FeedingItem} item @param {number} amount in the measure of {@link amountOf} */
export function withAmount({ food, grams, measure, count, supplements, fish }, amount) {
  return {
    food,
    ...(measure && count ? { grams: (grams * amount) / count, measure, count: amount } : { grams: amount }),
    ...(supplements?.length ? { supplements } : {}),
    ...(fish ? { fish } : {}),
  };
}
