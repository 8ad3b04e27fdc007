import { t } from "../text/index.js";
import { nameOf } from "../ui/names.js";
import { change } from "./forms.js";
/** @import { Desk, Today } from "../types.js" */
/** @import { SetupForm } from "./forms.js" */

/** @param {Desk} desk @param {Today} today @returns {SetupForm} */
export function tankForm(desk, { tank, ownFoods, ration }) {
  const foods = [...desk.reference.foods.values(), ...ownFoods];
  return {
    heading: t("setup.part.tank"),
    fields: [
      { name: "name", label: t("setup.tank.name"), needed: true, value: tank.name },
      { name: "volumeLitres", label: t("setup.tank.volume"), kind: "number", quantity: "volume", least: 10, most: 10_000_000,
        value: tank.volumeLitres ?? undefined, hint: t("setup.tank.volumeHint") },
      ...["innerLengthCm", "innerWidthCm", "waterHeightCm"].map((name) => /** @type {import("./record-form.js").Field} */ ({
        name, label: t(`setup.tank.${name}`), kind: "number", quantity: "length", least: 1, most: 100_000 })),
      { name: "displaced", label: t("setup.tank.displaced"), kind: "number", least: 0, most: 90, unit: "%" },
      { name: "temperatureC", label: t("setup.tank.temperature"), kind: "number", quantity: "temperature", least: 10, most: 35,
        value: tank.temperatureC ?? undefined, hint: t("setup.tank.temperatureHint") },
      { name: "rationFactor", label: t("setup.tank.factor"), kind: "number", least: 0.25, most: 4, value: ration.factor,
        hint: ration.weighings ? t("setup.tank.learned", { count: ration.weighings, value: ration.learned.value,
          low: ration.learned.low, high: ration.learned.high }) : t("setup.tank.factorHint") },
      { name: "usualFoods", label: t("setup.tank.foods"), kind: "many", hint: t("setup.tank.foodsHint"),
        value: tank.usualFoods, options: foods.map((food) => ({ value: food.key, label: nameOf(food) })) },
    ],
    write: ({ displaced, ...values }) => [change("tank", desk.tank?.id ?? "tank", {
      ...values, ...(displaced === undefined ? {} : { displacedPart: Number(displaced) / 100 }) })],
  };
}
