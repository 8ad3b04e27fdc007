import { has, t } from "../text/index.js";
/** @import { Desk, Food, Fish } from "../types.js" */

/** @param {Desk} desk @param {string} key */
export function foodName(desk, key) {
  return desk.foods.get(key)?.name ?? key;
}

/**
 * The short form for a tile: a second name behind a stroke or in brackets is left to the long form.
 * @param {Food} food
 */
export function shortFoodName(food) {
  return food.name.replace(/ \([^)]*\)/g, "").split(" / ")[0].replace("/", "/\u200b");
}

/** @param {Desk} desk @param {string} key */
export function supplementName(desk, key) {
  return (desk.reference.supplements.get(key)?.name ?? key).replace(/ \([^)]*\)/g, "");
}

/** @param {Pick<Fish, "name" | "commonName" | "species" | "count">} fish */
export function fishName(fish) {
  const name = fish.name || fish.commonName || fish.species;
  return fish.count > 1 ? t("fish.many", { name, n: fish.count }) : name;
}

/** @param {Desk} desk @param {string} key */
export function fishNamed(desk, key) {
  const fish = desk.today?.fish.find((one) => one.id === key);
  return fish ? fishName(fish) : key;
}

/** @param {Desk} desk @param {string | undefined} key */
export function feederNamed(desk, key) {
  return desk.today?.feeders.find((one) => one.key === key)?.name ?? key ?? "";
}

/** @param {Desk} desk @param {string} keeper */
export function keeperName(desk, keeper) {
  if (keeper === desk.keeper?.id) return t("keeper.you");
  return desk.tank?.keepers?.find(({ id }) => id === keeper)?.name ?? t("keeper.other");
}

/**
 * The words for a component, a step or an input; its key made readable where the engine knows more than the text file.
 * @param {string} kind
 * @param {string} key
 */
export function label(kind, key) {
  const textKey = `${kind}.${key}`;
  return has(textKey) ? t(textKey) : key.replace(/([a-z])([A-Z])/g, "$1 $2").replaceAll(/[_-]/g, " ").toLowerCase();
}
