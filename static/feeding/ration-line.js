/** @import { Desk, Ration, Today } from "../types.js" */
import { html } from "lit";
import { clock, grams, kj, range, t } from "../text/index.js";
import { keeperName, measureName, shortFoodName } from "../ui/names.js";
import { measuresOf, spokenCount } from "./measures.js";

const justFedMinutes = 30;

/** How much of the day's ration is in, what would fill the rest, and who fed last. @param {Desk} desk @param {Today} today */
export function rationLine(desk, today) {
  const { ration, lastFeeding, day } = today;
  if (!today.fish.length) return html`<section class="ration" aria-label=${t("ration.label")}>${noFishYet()}</section>`;
  const [one, other] = ration.foods.slice(0, 2).map((row) => asFood(desk, today, row));
  return html`<section class="ration" aria-label=${t("ration.label")}>
    <p class="row apart"><span><strong>${kj(ration.givenKj.value)}</strong> ${t("ration.given")}</span>
      <span>${ration.remainingKj.value > 0
        ? html`<strong>${kj(ration.remainingKj.value)}</strong> ${t("ration.stillDue")}` : metOrMore(ration)}</span></p>
    <tide-line .due=${ration.dueKj} .given=${ration.givenKj} .hand=${ration.givenHandKj} .feeder=${ration.givenFeederKj}></tide-line>
    ${ration.remainingKj.value > 0 && one ? html`<p><small>${t("ration.about", {
      foods: t("ration.or", { first: one, rest: other ?? "" }) })}</small></p>` : ""}
    ${lastFeeding && lastFeeding.day === day ? html`<p class=${isJustFed(desk, today, lastFeeding) ? "flag" : ""}><small>${t("ration.last", {
      at: clock(lastFeeding.minute), by: keeperName(desk, lastFeeding.by) })}</small></p>` : ""}
  </section>`;
}

/** There is nothing to reckon, and a way on. */
export const noFishYet = () => html`<p>${t("ration.noFish")} <a href="#/setup/add-fish">${t("ration.addFish")}</a></p>`;

/** More than anybody reckons to be due is said as such. @param {Ration} ration */
export function metOrMore({ dueKj, givenKj }) {
  return givenKj.value > dueKj.high ? html`<strong class="flag">${t("ration.more", { surplus: kj(givenKj.value - dueKj.value) })}</strong>` : t("ration.met");
}

/** Whether somebody else fed so lately that it matters. @param {Desk} desk @param {Today} today @param {NonNullable<Today["lastFeeding"]>} last */
function isJustFed({ keeper }, today, { by, day, minute }) {
  return by !== keeper?.id && (today.day - day) * 1440 + today.minute - minute <= justFedMinutes;
}

/** In the measure it is given with: nobody counts grams at the tank. @param {Desk} desk @param {Today} today @param {Ration["foods"][number]} row */
function asFood(desk, today, { food: key, grams: mass }) {
  const food = desk.foods.get(key);
  const measure = food && measuresOf(food, today)[0];
  if (!measure || measure.name === "g") return `${range(mass.low, mass.high, grams)} ${food ? shortFoodName(food) : key}`;
  return t("measure.count", { count: mass.high / measure.grams, n: range(mass.low / measure.grams, mass.high / measure.grams, portioned), name: measureName(measure.name) });
}

/** Whole ones from three on and halves below: nobody portions finer. @param {number} count */
const portioned = (count) => spokenCount(count < 3 ? Math.max(0.5, Math.round(2 * count) / 2) : Math.round(count));
