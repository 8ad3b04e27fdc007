/** @import { Desk } from "../types.js" */
import { fishName, fishNamed, foodName, keeperName, supplementName } from "../ui/names.js";

/** One for each desk until a name changes, so that a list knows when its names are the same ones. @type {WeakMap<Desk, { said: string, names: ReturnType<typeof newNames> }>} */
const known = new WeakMap();

/** What the rows of a list ask about the keys in their feedings. @param {Desk} desk */
export function namesFrom(desk) {
  const said = JSON.stringify([desk.glance?.ownFoods, desk.today?.fish.map(fishName), desk.reference.foods.size, desk.tank?.keepers, desk.keeper?.id]);
  const last = known.get(desk);
  if (last?.said === said) return last.names;
  const names = newNames(desk);
  known.set(desk, { said, names });
  return names;
}

/** @param {Desk} desk */
function newNames(desk) {
  return {
    food: (/** @type {string} */ key) => foodName(desk, key),
    fish: (/** @type {string} */ key) => fishNamed(desk, key),
    supplement: (/** @type {string} */ key) => supplementName(desk, key),
    keeper: (/** @type {string} */ id) => keeperName(desk, id),
    shares: (/** @type {string} */ id) => desk.opened.shares(id),
    picture: async (/** @type {string} */ id) => (await desk.album()).picture(id),
  };
}
