import { foodName, nameOf, supplementName } from "../ui/names.js";
import { t, written } from "../text/index.js";
import { typed } from "../text/units.js";
import { change, newKey } from "./forms.js";
import { findNamed } from "./find-named.js";
/** @import { Desk, Today } from "../types.js" */
/** @import { SetupForm } from "./forms.js" */
/** @import { Field } from "./record-form.js" */

const labelParts = ["waterGrams", "proteinGrams", "fatGrams", "fibreGrams", "ashGrams", "phosphorusMg"];
const mostPhosphorusMg = 10_000;
const components = ["algae", "sponge", "crustacean", "mollusc", "worm", "fish", "plankton", "tunicate", "cnidarian", "echinoderm", "detritus", "other"];
const categories = ["prepared", "dry", "crustacean", "mollusc", "fish", "zooplankton", "macroalgae", "greens", "sponge-bearing"];

/** @param {Desk} desk @param {Today} today @param {string} key @returns {SetupForm} */
export function measureForm(desk, today, key) {
  const known = today.measures.find((measure) => measure.key === key);
  return {
    heading: t("setup.measure.heading"),
    intro: t("setup.measure.intro"),
    caution: t("caution.raw"),
    fields: [
      { name: "name", label: t("setup.measure.name"), needed: true, value: known?.name },
      foodField(desk, today, known?.food),
      { name: "together", label: t("setup.measure.together"), kind: "number", least: 1, most: 1000, value: 10, hint: t("setup.measure.togetherHint") },
      { name: "grams", label: t("setup.measure.grams"), kind: "number", quantity: "mass", least: 0.001, most: 5000, needed: true,
        value: known ? known.grams * 10 : undefined },
      { name: "basis", label: t("setup.measure.basis"), kind: "choice", value: known?.basis ?? "weighed",
        options: ["weighed", "assumed"].map((value) => ({ value, label: t(`setup.basis.${value}`) })) },
      shelfField(),
    ],
    write: ({ name, food, together = 1, grams, basis, status }) => [change("measure", known?.key ?? newKey(String(name)), {
      name, food, grams: Number(grams) / Number(together), basis, status })],
  };
}

/** @param {Desk} desk @param {Today} today @param {string} key @returns {SetupForm} */
export function foodForm(desk, today, key) {
  const known = today.ownFoods.find((food) => food.key === key);
  return {
    heading: t("setup.food.heading"),
    intro: t("setup.food.intro"),
    fields: [
      { name: "name", label: t("setup.food.name"), needed: true, value: known?.name },
      { name: "category", label: t("setup.food.category"), kind: "choice", value: known?.category ?? "prepared",
        options: categories.map((value) => ({ value, label: t(`category.${value}`) })) },
      ...labelParts.map((name) => labelField(name)),
      { name: "components", label: t("setup.food.components"), kind: "long", hint: t("setup.food.componentsHint"), check: wrongParts },
      shelfField(),
    ],
    write: ({ components, ...set }) => [change("food", known?.key ?? newKey(String(set.name)), {
      ...set, ...(components ? { components: readParts(String(components)) } : {}) })],
  };
}

/** @param {string} name @returns {Field} */
const labelField = (name) => ({ name, label: t(`setup.food.${name}`), kind: "number", least: 0,
  most: name === "phosphorusMg" ? mostPhosphorusMg : 100, unit: name === "phosphorusMg" ? "mg/100 g" : "%",
  needed: ["waterGrams", "proteinGrams", "fatGrams"].includes(name) });

/** @param {Desk} desk @param {Today} today @param {string} key @returns {SetupForm} */
export function recipeForm(desk, today, key) {
  const known = today.recipes.find((recipe) => recipe.key === key);
  const foods = allFoods(desk, today);
  return {
    heading: t("setup.recipe.heading"),
    intro: t("setup.recipe.intro"),
    fields: [
      { name: "name", label: t("setup.recipe.name"), needed: true, value: known?.name },
      { name: "items", label: t("setup.recipe.items"), kind: "long", needed: true, hint: t("setup.recipe.itemsHint"), check: (text) => wrongItems(text, foods),
        value: known?.items.map(({ food, grams }) => `${written(grams)} g ${foodName(desk, food)}`).join("\n") },
      { name: "supplement", label: t("setup.recipe.supplement"), kind: "choice", value: known?.items[0]?.supplements[0] ?? "",
        options: [{ value: "", label: t("setup.recipe.nothing") }, ...[...desk.reference.supplements.values()]
          .map((supplement) => ({ value: String(supplement.key), label: supplementName(desk, String(supplement.key)) }))] },
      shelfField(),
    ],
    write: ({ name, items, supplement, status }) => [change("recipe", known?.key ?? newKey(String(name)), {
      name, status, items: readItems(String(items), foods)
        .map((item) => ({ ...item, ...(supplement ? { supplements: [supplement] } : {}) })) })],
  };
}

/** @param {Desk} desk @param {Today} today */
const allFoods = (desk, today) => [...today.ownFoods, ...desk.reference.foods.values()].map((food) => ({ key: food.key, name: nameOf(food) }));

/** @param {Desk} desk @param {Today} today @param {string} [value] @returns {Field} */
const foodField = (desk, today, value) => ({ name: "food", label: t("setup.measure.food"), kind: "choice", value: value ?? today.tank.usualFoods[0],
  options: allFoods(desk, today).map(({ key, name }) => ({ value: key, label: name })) });

/** @returns {Field} */
const shelfField = () => ({ name: "status", label: t("setup.shelf"), kind: "choice", value: "here",
  options: ["here", "gone"].map((value) => ({ value, label: t(`setup.shelf.${value}`) })) });

/** @param {string} text */
function wrongParts(text) {
  const lines = text.split("\n").filter((line) => line.trim());
  const shares = Object.values(readParts(text));
  const wrong = lines.filter((line) => !Object.keys(readParts(line)).length);
  if (wrong.length) return t("setup.fault.parts", { lines: wrong });
  return shares.reduce((sum, share) => sum + share, 0) > 1.001 ? t("setup.fault.partsSum") : undefined;
}

/** @param {string} text @param {{ key: string, name: string }[]} foods */
function wrongItems(text, foods) {
  const wrong = text.split("\n").filter((line) => line.trim() && !readItems(line, foods).length);
  return wrong.length ? t("setup.fault.items", { lines: wrong }) : undefined;
}

/** The key of a component by what this language calls it, or by its key. @param {string} words */
const componentNamed = (words) => components.find((key) => t(`component.${key}`).toLowerCase() === words) ?? components.find((key) => key === words);

/** "crustacean 60" to a line, in parts of a hundred of the dry matter. @param {string} text */
export function readParts(text) {
  return Object.fromEntries(text.split("\n").flatMap((line) => {
    const [, words, share] = /^\s*([\p{L}_ ]+?)\s*[:=]?\s*(\d+(?:[.,]\d+)?)\s*%?\s*$/iu.exec(line) ?? [];
    const key = words ? componentNamed(words.trim().toLowerCase()) : undefined;
    return key ? [[key, typed(share) / 100]] : [];
  }));
}

/**
 * "12 g mysid shrimp" to a line.
 * @param {string} text
 * @param {{ key: string, name: string }[]} foods
 */
export function readItems(text, foods) {
  return text.split("\n").flatMap((line) => {
    const [, mass, words] = /^\s*(\d+(?:[.,]\d+)?)\s*g\s+(.+?)\s*$/i.exec(line) ?? [];
    const food = words ? findNamed(words, foods) : null;
    return food ? [{ food, grams: typed(mass) }] : [];
  });
}
