import { t } from "../text/index.js";
import { change } from "../setup/forms.js";
/** @import { Desk, Today, Water } from "../types.js" */
/** @import { SetupForm } from "../setup/forms.js" */
/** @import { Field, Values } from "../setup/record-form.js" */

/** What kits read, and how it becomes what the journal keeps; the factors come from the engine. @param {Water["factors"]} factors @returns {Record<string, Record<string, number>>} */
const unitsOf = (factors) => ({
  nitrate: { "mg/L NO₃": 1, "mg/L N": factors.nitratePerNitrogen },
  phosphate: { "mg/L PO₄": 1, "mg/L P": factors.phosphatePerPhosphorus },
  alkalinity: { dKH: 1, "mg/L CaCO₃": factors.dkhPerMgL, "meq/L": factors.dkhPerMeq },
});

/** A water test, in the units of the kit. @param {Water} water @returns {SetupForm} */
export function testForm(water) {
  const units = unitsOf(water.factors);
  return {
    heading: t("water.test.heading"),
    intro: t("water.test.intro"),
    caution: t("cautions.wounds.text"),
    fields: [
      amount("nitrate", 1000), unitField("nitrate", units),
      amount("phosphate", 100), unitField("phosphate", units),
      amount("ammonia", 100, "mg/L"),
      amount("alkalinity", 1000), unitField("alkalinity", units),
      { name: "temperature", label: t("water.temperature"), kind: "number", quantity: "temperature", least: 0, most: 45 },
      amount("salinity", 100, "g/kg"),
    ],
    write: (given) => [{ kind: "water-test", body: bodyOf(given, units) }],
  };
}

/** @param {Values} given @param {Record<string, Record<string, number>>} units */
function bodyOf({ nitrate, phosphate, ammonia, alkalinity, temperature, salinity, ...chosen }, units) {
  /** @type {Record<string, unknown>} */
  const body = {};
  const asEntered = /** @type {Record<string, unknown>} */ ({});
  const put = (/** @type {string} */ name, /** @type {string} */ kind, /** @type {unknown} */ value) => {
    if (typeof value !== "number") return;
    const unit = String(chosen[`${kind}Unit`]);
    const factor = units[kind][unit];
    body[name] = value * factor;
    // The same kit is on the shelf next time.
    localStorage.setItem(`provender.kit.${kind}`, unit);
    if (factor !== 1) asEntered[kind] = { value, unit };
  };
  put("nitrateMgL", "nitrate", nitrate);
  put("phosphateMgL", "phosphate", phosphate);
  put("alkalinityDkh", "alkalinity", alkalinity);
  if (ammonia !== undefined) body.ammoniaMgL = ammonia;
  if (temperature !== undefined) body.temperatureC = temperature;
  if (salinity !== undefined) body.salinityPpt = salinity;
  return Object.keys(asEntered).length ? { ...body, asEntered } : body;
}

/**
 * The usual slip: a kit that reads nitrogen taken for one that reads nitrate. When the test lies as far from the last one as
 * the two units lie apart, it is worth a question; else null.
 * @param {Record<string, any>} body of a water test
 * @param {Water} water
 * @returns {{ name: string, ion: string, unit: string, value: number, other: number } | null}
 */
export function slip(body, { ions, factors }) {
  for (const { ion, points } of ions) {
    const name = `${ion}MgL`;
    const last = points.at(-1)?.mgL;
    const factor = ion === "nitrate" ? factors.nitratePerNitrogen : factors.phosphatePerPhosphorus;
    const value = body[name];
    if (!last || !value) continue;
    for (const turned of [value * factor, value / factor]) {
      if (Math.abs(Math.log(turned / last)) < Math.log(1.25) && Math.abs(Math.log(value / last)) > Math.log(2.5)) {
        return { name, ion, unit: ion === "nitrate" ? "mg/L N" : "mg/L P", value, other: turned };
      }
    }
  }
  return null;
}

/** Water taken out and replaced. @param {Today} today @returns {SetupForm} */
export function exchangeForm(today) {
  return {
    heading: t("water.exchange.heading"),
    caution: `${t("cautions.mains.text")} ${t("cautions.wounds.text")}`,
    fields: [
      { name: "litres", label: t("water.exchange.litres"), kind: "number", quantity: "volume", least: 0.1, most: today.tank.volumeLitres || 10_000_000, needed: true },
      { name: "sourceNitrateMgL", label: t("water.exchange.nitrate"), kind: "number", least: 0, most: 500, unit: "mg/L" },
      { name: "sourcePhosphateMgL", label: t("water.exchange.phosphate"), kind: "number", least: 0, most: 50, unit: "mg/L" },
    ],
    write: (body) => [{ kind: "exchange", body }],
  };
}

/** Something put in to take nutrients out; what and how much is between the keeper and the maker. @returns {SetupForm} */
export function dosingForm() {
  return {
    heading: t("water.dosing.heading"),
    intro: t("water.dosing.intro"),
    caution: t("cautions.wounds.text"),
    fields: [
      { name: "what", label: t("water.dosing.what"), kind: "choice", value: "media", options: ["media", "carbon", "other"].map((value) => ({ value, label: t(`water.dosing.${value}`) })) },
      { name: "note", label: t("water.dosing.note") },
    ],
    write: (body) => [{ kind: "dosing", body }],
  };
}

/** What nitrate and phosphate are to stay below. @param {Desk} desk @param {Water} water @returns {SetupForm} */
export function wantedForm(desk, water) {
  const of = (/** @type {string} */ ion) => water.ions.find((one) => one.ion === ion)?.wantedMgL;
  return {
    heading: t("water.wanted.heading"),
    intro: t("water.wanted.intro"),
    fields: [
      { name: "wantedNitrateMgL", label: t("water.nitrate"), kind: "number", least: 0.1, most: 500, unit: "mg/L", needed: true, value: of("nitrate") },
      { name: "wantedPhosphateMgL", label: t("water.phosphate"), kind: "number", least: 0.001, most: 10, unit: "mg/L", needed: true, value: of("phosphate") },
    ],
    write: (set) => [change("tank", String(desk.tank?.id), set)],
  };
}

/** @param {string} name @param {number} most @param {string} [unit] @returns {Field} */
const amount = (name, most, unit) => ({ name, label: t(`water.${name}`), kind: "number", least: 0, most, unit });

/** @param {string} name @param {Record<string, Record<string, number>>} units @returns {Field} */
const unitField = (name, units) => ({ name: `${name}Unit`, label: t("water.unit", { what: t(`water.${name}`) }), kind: "choice",
  value: localStorage.getItem(`provender.kit.${name}`) ?? undefined,
  options: Object.keys(units[name]).map((value) => ({ value, label: value })) });
