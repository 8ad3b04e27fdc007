/** @import { Feeding } from "../types.js" */
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

/** The same once more; what was left over or refused then is not. @param {Feeding} feeding */
export function onceMore({ items }) {
  return { items: items.map(({ food, grams: mass, measure, count, supplements, fish }) => ({
    food, grams: mass, ...(measure ? { measure, count } : {}), ...(supplements?.length ? { supplements } : {}), ...(fish ? { fish } : {}) })) };
}
