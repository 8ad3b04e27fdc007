/** @import { Desk } from "../types.js" */
import { fishNamed, foodName, keeperName, supplementName } from "../ui/names.js";

/** One for each desk, so that a list knows that its names are the same ones. @type {WeakMap<Desk, ReturnType<typeof newNames>>} */
const names = new WeakMap();

/** What the rows of a list ask about the keys in their feedings. @param {Desk} desk */
export function namesFrom(desk) {
  const known = names.get(desk) ?? newNames(desk);
  names.set(desk, known);
  return known;
}

/** @param {Desk} desk */
function newNames(desk) {
  return {
    food: (/** @type {string} */ key) => foodName(desk, key),
    fish: (/** @type {string} */ key) => fishNamed(desk, key),
    supplement: (/** @type {string} */ key) => supplementName(desk, key),
    keeper: (/** @type {string} */ id) => keeperName(desk, id),
    shares: (/** @type {string} */ id) => desk.shares(id),
    picture: async (/** @type {string} */ id) => (await desk.album()).picture(id),
  };
}
