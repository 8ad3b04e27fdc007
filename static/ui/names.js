import { has, t } from "../text/index.js";
/** @import { Desk, Food, Fish } from "../types.js" */

/** A food of the tables in the language of the page; a tank's own as its keeper named it. @param {Pick<Food, "key" | "name">} food */
export const nameOf = (food) => broken(food).replaceAll("\u00ad", "");

/** The same, with the places where a long word may be broken. @param {Pick<Food, "key" | "name">} food */
const broken = ({ key, name }) => (has(`food.${key}`) ? t(`food.${key}`) : name);

/** @param {Desk} desk @param {string} key */
export function foodName(desk, key) {
  const food = desk.foods.get(key);
  return food ? nameOf(food) : key;
}

/**
 * The short form for a tile: a second name behind a stroke or in brackets is left to the long form.
 * @param {Food} food
 */
export function shortFoodName(food) {
  return broken(food).replace(/ \([^)]*\)/g, "").split(" / ")[0].replace("/", "/\u200b");
}

/** @param {Desk} desk @param {string} key */
export function supplementName(desk, key) {
  return (has(`supplement.${key}`) ? t(`supplement.${key}`) : desk.reference.supplements.get(key)?.name ?? key).replace(/ \([^)]*\)/g, "");
}

/** @param {Desk} desk @param {string} guild */
export const guildName = (desk, guild) => (has(`guild.${guild}`) ? t(`guild.${guild}`) : String(desk.reference.guilds.get(guild)?.label ?? guild));

/** What to know before keeping one. @param {Desk} desk @param {string} guild */
export const guildWarning = (desk, guild) => (has(`guild.${guild}.warning`) ? t(`guild.${guild}.warning`) : String(desk.reference.guilds.get(guild)?.warning ?? ""));

/** A household measure of the tables in the language of the page, such as "small clam"; a tank's own as its keeper named it. @param {string} name */
export function measureName(name) {
  const key = `measure.of.${name.toLowerCase().replaceAll(/[^a-z0-9]+/g, "_")}`;
  return has(key) ? t(key) : name;
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
