import { harmOf } from "../fish/harm.js";
import { fishName, guildName, guildWarning } from "../ui/names.js";
import { t } from "../text/index.js";
import { change, newKey } from "./forms.js";
/** @import { Desk, Today } from "../types.js" */
/** @import { SetupForm, Writing } from "./forms.js" */
/** @import { Field, Values } from "./record-form.js" */

/** @param {Desk} desk @param {Today} today @param {string} key of the species @returns {SetupForm} */
export function newFishForm(desk, today, key) {
  const row = desk.reference.species.get(key);
  return {
    heading: t("setup.fish.new", { name: row?.common_name ?? (key || t("setup.fish.own")) }),
    intro: row ? `${row.scientific_name} · ${guildName(desk, String(row.guild))}` : t("setup.fish.ownMeans"),
    caution: [row ? guildWarning(desk, String(row.guild)) : "", row ? harmOf(desk, key) : ""].filter(Boolean).join(" ") || undefined,
    deed: t("setup.fish.add"),
    fields: [
      ...(row ? [] : ownSpeciesFields(desk)),
      { name: "name", label: t("setup.fish.name"), value: String(row?.common_name ?? ""), needed: true },
      { name: "count", label: t("setup.fish.count"), kind: "number", least: 1, most: 500, value: 1, needed: true },
      ...lengthFields(),
      placeField("display"),
    ],
    write: (values) => {
      const { how = "eye", lengthCm, ...set } = values;
      const fish = newKey(String(values.name));
      return [change("fish", fish, { species: key, ...set, arrivedOn: desk.opened.nowIso().slice(0, 10), ...size(desk, how, lengthCm) })];
    },
  };
}

/** @param {Desk} desk @param {Today} today @param {string} key @returns {SetupForm} */
export function fishForm(desk, today, key) {
  const fish = today.fish.find(({ id }) => id === key);
  return {
    heading: fish ? fishName(fish) : t("setup.part.fish"),
    caution: [fish ? harmOf(desk, fish.species) : "", t("caution.catch")].filter(Boolean).join(" "),
    links: [{ to: `#/setup/size/${encodeURIComponent(key)}`, words: t("setup.fish.measure") }],
    fields: [
      { name: "name", label: t("setup.fish.name"), value: fish?.name, needed: true },
      { name: "count", label: t("setup.fish.count"), kind: "number", least: 1, most: 500, value: fish?.count, needed: true },
      placeField(fish?.place ?? "display"),
      { name: "status", label: t("setup.fish.status"), kind: "choice", value: "here", hint: t("setup.fish.statusHint"),
        options: ["here", "moved", "died"].map((value) => ({ value, label: t(`setup.status.${value}`) })) },
    ],
    write: (values) => [change("fish", key, values)],
  };
}

/** @param {Desk} desk @param {Today} today @param {string} key @returns {SetupForm} */
export function sizeForm(desk, today, key) {
  const fish = today.fish.find(({ id }) => id === key);
  return {
    heading: t("setup.size.heading", { name: fish ? fishName(fish) : key }),
    intro: t("setup.size.intro"),
    caution: t("caution.catch"),
    fields: [
      ...lengthFields(),
      { name: "grams", label: t("setup.size.weight"), kind: "number", quantity: "mass", least: 0.1, most: 500_000, hint: t("setup.size.weightHint") },
    ],
    write: ({ how = "eye", lengthCm, grams }) => {
      const { lengthCm: cm, lengthErrorCm: errorCm } = size(desk, how, lengthCm);
      return [
        ...(cm === undefined ? [] : [seen(key, { saw: "length", cm, lengthType: "TL", errorCm })]),
        ...(grams === undefined ? [] : [seen(key, { saw: "weight", grams })]),
      ];
    },
  };
}

/** @param {string} fish @param {Record<string, unknown>} what @returns {Writing} */
const seen = (fish, what) => ({ kind: "observation", body: JSON.parse(JSON.stringify({ fish, ...what })) });

/** @returns {Field[]} */
const lengthFields = () => [
  { name: "lengthCm", label: t("setup.size.length"), kind: "number", quantity: "length", least: 1, most: 300, hint: t("setup.size.lengthHint") },
  { name: "how", label: t("setup.size.how"), kind: "choice", value: "eye",
    options: ["eye", "beside", "ruler"].map((value) => ({ value, label: t(`setup.how.${value}`) })) },
];

/** @param {string} value @returns {Field} */
const placeField = (value) => ({ name: "place", label: t("setup.fish.place"), kind: "choice", value,
  options: ["display", "isolation"].map((place) => ({ value: place, label: t(`setup.place.${place}`) })) });

/** @param {Desk} desk @returns {Field[]} */
const ownSpeciesFields = (desk) => [
  { name: "species", label: t("setup.fish.species"), needed: true, hint: t("setup.fish.speciesHint") },
  { name: "family", label: t("setup.fish.family"), kind: "choice", options: [{ value: "", label: t("setup.fish.familyUnknown") },
    ...[...desk.reference.families.keys()].map((value) => ({ value, label: value }))] },
  { name: "maxLengthCm", label: t("setup.fish.maxLength"), kind: "number", quantity: "length", least: 1, most: 500, hint: t("setup.fish.maxLengthHint") },
  { name: "guild", label: t("setup.fish.guild"), kind: "choice", value: "omnivore",
    options: [...desk.reference.guilds.values()].map(({ guild }) => ({ value: String(guild), label: guildName(desk, String(guild)) })) },
];

/**
 * By eye through glass the engine takes its own, published error.
 * @param {Desk} desk @param {string | number | string[]} how @param {Values[string] | undefined} cm
 * @returns {{ lengthCm?: number, lengthType?: string, lengthErrorCm?: number }}
 */
function size({ reference: { constants } }, how, cm) {
  if (typeof cm !== "number") return {};
  const error = how === "beside" ? cm * Number(constants.get("length_error_beside")?.value)
    : how === "ruler" ? Number(constants.get("length_error_ruler_cm")?.value) : undefined;
  return { lengthCm: cm, lengthType: "TL", ...(error === undefined ? {} : { lengthErrorCm: error }) };
}
