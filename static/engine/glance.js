/** @import { Glance, Today } from "../types.js" */

/** What a feeding can be tapped in from before the day is reckoned: no figure that could be out of date. @param {Today} today @returns {Glance} */
export function glanceOf({ day, minute, tank, feedings, measures, ownFoods, recipes, fish }) {
  const named = fish.map(({ id, name, commonName, species, count }) => ({ id, name, commonName, species, count }));
  return { day, minute, tank, feedings, measures, ownFoods, recipes, fish: named };
}

/** The same, as of now. @param {Glance} kept @param {string} now local time with offset @returns {Glance} */
export function glanceAt(kept, now) {
  const [day, clock] = [now.slice(0, 10), now.slice(11, 16)];
  return { ...kept, day: Date.parse(day) / 86_400_000, minute: Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3)) };
}
