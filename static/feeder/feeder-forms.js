import { foodName } from "../ui/names.js";
import { clock, t } from "../text/index.js";
import { typed } from "../text/units.js";
import { change, newKey } from "../setup/forms.js";
/** @import { AutoFeeder, Desk, Today } from "../types.js" */
/** @import { SetupForm } from "../setup/forms.js" */
/** @import { Field } from "../setup/record-form.js" */

/** How a feeder is set: its hopper, what is in it, when it drops and how often. @param {Desk} desk @param {Today} today @param {string} key @returns {SetupForm} */
export function feederForm(desk, today, key) {
  const known = today.feeders.find((feeder) => feeder.key === key);
  return {
    heading: known ? t("feeder.set.heading", { name: known.name }) : t("feeder.new"),
    intro: t("feeder.set.intro"),
    caution: t("cautions.mains.text"),
    fields: [
      { name: "name", label: t("feeder.set.name"), needed: true, value: known?.name },
      foodField(desk, today, "food", t("feeder.set.food"), known?.mix[0]?.food ?? "pellet_small_soft"),
      foodField(desk, today, "second", t("feeder.set.second"), known?.mix[1]?.food ?? "", true),
      { name: "part", label: t("feeder.set.part"), kind: "number", least: 0, most: 100, unit: "%", value: partOfSecond(known) },
      { name: "times", label: t("feeder.set.times"), kind: "long", needed: true, hint: t("feeder.set.timesHint"), check: wrongTimes,
        value: known?.times.map(({ minute, drops }) => `${clock(minute)} ${drops}`).join("\n") ?? "10:00 1\n15:00 1" },
      { name: "hopperGrams", label: t("feeder.set.hopper"), kind: "number", quantity: "mass", least: 0, most: 20_000, value: known?.hopperGrams },
      { name: "clearGrams", label: t("feeder.set.clear"), kind: "number", quantity: "mass", least: 0, most: 5000, value: known?.clearGrams, hint: t("feeder.set.clearHint") },
      { name: "share", label: t("feeder.set.share"), kind: "number", least: 0, most: 100, unit: "%", value: Math.round((known?.share ?? 1) * 100) },
    ],
    write: ({ name, food, second, part = 0, times, hopperGrams, clearGrams, share = 100 }) => {
      const read = readTimes(String(times));
      const mix = second && second !== food ? [{ food, share: 1 - Number(part) / 100 }, { food: second, share: Number(part) / 100 }] : [{ food, share: 1 }];
      return [change("feeder", known?.key ?? newKey(String(name)), {
        name, mix, times: read.map(({ time }) => time), drops: read.map(({ drops }) => drops), share: Number(share) / 100,
        ...(hopperGrams === undefined ? {} : { hopperGrams }), ...(clearGrams === undefined ? {} : { clearGrams }),
        ...(known ? {} : { running: false }) })];
    },
  };
}

/** What went into the hopper, and what was still there. @param {Desk} desk @param {Today} today @param {string} key @returns {SetupForm} */
export function fillForm(desk, today, key) {
  const known = today.feeders.find((feeder) => feeder.key === key);
  return {
    heading: t("feeder.fill.heading", { name: known?.name ?? "" }),
    intro: t("feeder.fill.intro"),
    fields: [
      { name: "leftGrams", label: t("feeder.fill.left"), kind: "number", quantity: "mass", least: 0, most: 20_000, hint: t("feeder.fill.leftHint") },
      { name: "addedGrams", label: t("feeder.fill.added"), kind: "number", quantity: "mass", least: 0, most: 20_000, needed: true },
    ],
    write: (given) => [{ kind: "hopper-fill", body: { feeder: key, ...given } }],
  };
}

/** How much of the ration is to come dry from feeders. @param {Desk} desk @param {Today} today @returns {SetupForm} */
export function dryPartForm(desk, today) {
  return {
    heading: t("feeder.part.heading"),
    intro: t("feeder.part.intro"),
    fields: [{ name: "part", label: t("feeder.part"), kind: "number", least: 0, most: 100, unit: "%", needed: true, value: Math.round(today.dryPart * 100) }],
    write: ({ part }) => [change("tank", String(desk.tank?.id), { feederPart: Number(part) / 100 })],
  };
}

/** @param {AutoFeeder | undefined} known */
function partOfSecond(known) {
  const sum = known?.mix.reduce((all, { share }) => all + share, 0) ?? 0;
  return known?.mix[1] && sum ? Math.round((100 * known.mix[1].share) / sum) : 0;
}

/** @param {Desk} desk @param {Today} today @param {string} name @param {string} label @param {string} value @param {boolean} [none] @returns {Field} */
function foodField(desk, today, name, label, value, none = false) {
  const keys = [...new Set([value, ...desk.foods.keys()])].filter((key) => key && (desk.foods.get(key)?.category === "dry" || key === value
    || today.ownFoods.some((own) => own.key === key)));
  return { name, label, kind: "choice", value,
    options: [...(none ? [{ value: "", label: t("feeder.set.none") }] : []), ...keys.map((key) => ({ value: key, label: foodName(desk, key) }))] };
}

/** "08:30 2" to a line: at half past eight two drops. @param {string} text */
export function readTimes(text) {
  return text.split("\n").flatMap((line) => {
    const [, hour, minute, drops] = /^\s*(\d{1,2}):(\d{2})\s*[x×]?\s*(\d{1,4})\s*$/.exec(line) ?? [];
    return hour && Number(hour) < 24 && Number(minute) < 60 ? [{ time: `${hour.padStart(2, "0")}:${minute}`, drops: typed(drops) }] : [];
  });
}

/** @param {string} text */
function wrongTimes(text) {
  const wrong = text.split("\n").filter((line) => line.trim() && !readTimes(line).length);
  return wrong.length ? t("feeder.fault.times", { lines: wrong }) : undefined;
}
