import { html } from "lit";
import { Asked } from "../ui/asked.js";
import { Element } from "../ui/element.js";
import { figure, grams, percent, plain, t } from "../text/index.js";
/** @import { Desk, Feed, Ion, Water } from "../types.js" */

const feedings = [0.5, 0.75, 1, 1.25, 1.5];
const drops = [0, 0.5, 1, 1.5, 2];
const fractions = [0, 0.05, 0.1, 0.15, 0.2, 0.3];
const intervals = [7, 14, 28];
const newcomers = [0, 50, 150, 400];
const monthDays = 28;
const level = (/** @type {number | undefined} */ value) => (value === undefined ? t("water.whatIf.noEnd") : figure(value, ""));

/** What another ration, another exchange or one more fish would do to the water. Nothing of it is kept. */
export class WhatIf extends Element {
  static properties = { water: { attribute: false }, calc: { attribute: false }, temperatureC: { type: Number } };

  #fed = 1;
  #dropped = 1;
  #more = 0;
  /** @type {number | null} */
  #fraction = null;
  /** @type {Asked<any[]>} */
  #answers = new Asked(this);
  /** @type {number | null} */
  #every = null;

  constructor() {
    super();
    /** @type {Water | null} */
    this.water = null;
    /** @type {Desk["calc"]} */
    this.calc = async () => ({});
    this.temperatureC = 26;
  }

  render() {
    const { water } = this;
    if (!water?.volumeLitres) return "";
    const fraction = this.#fraction ?? nearest(fractions, water.habit.fraction);
    const every = this.#every ?? nearest(intervals, water.habit.everyDays);
    const answers = this.#answers.of([water, this.#fed, this.#dropped, this.#more, fraction, every, this.temperatureC],
      () => this.#reckon(water, fraction, every));
    return html`<section>
      <h2>${t("water.whatIf")}</h2>
      <p>${t("water.whatIf.means")}</p>
      ${this.#choice("fed", t("water.whatIf.fed"), feedings, this.#fed, percent, (chosen) => (this.#fed = chosen))}
      ${water.feeders.gramsPerDay ? this.#choice("dropped", t("water.whatIf.dropped"), drops, this.#dropped, percent, (chosen) => (this.#dropped = chosen)) : ""}
      ${this.#choice("more", t("water.whatIf.fish"), newcomers, this.#more, (mass) => (mass ? grams(mass) : t("water.whatIf.noFish")), (chosen) => (this.#more = chosen))}
      ${this.#choice("fraction", t("water.whatIf.exchange"), fractions, fraction, percent, (chosen) => (this.#fraction = chosen))}
      ${this.#choice("every", t("water.whatIf.every"), intervals, every, (days) => t("water.days", { count: days, n: plain(days) }), (chosen) => (this.#every = chosen))}
      <table><thead><tr><th scope="col"></th><th scope="col">${t("water.whatIf.month")}</th><th scope="col">${t("water.whatIf.end")}</th>
        <th scope="col">${t("water.whatIf.needed")}</th></tr></thead>
        <tbody role="status">${water.ions.map((ion, place) => row(ion, answers?.[place], every))}</tbody></table>
      ${water.ions.some(({ export: out }) => !out) ? html`<p><small>${t("water.whatIf.noExport")}</small></p>` : ""}
    </section>`;
  }

  /** One answer for each ion. @param {Water} water @param {number} fraction @param {number} every */
  async #reckon(water, fraction, every) {
    const mouths = await this.#moreMouths(water);
    return Promise.all(water.ions.map((ion) => this.#ion(water, ion, fraction, every, mouths)));
  }

  /** @param {Water} water @param {Ion} ion @param {number} fraction @param {number} every @param {number} mouths */
  async #ion(water, ion, fraction, every, mouths) {
    const start = ion.now?.value ?? ion.points.at(-1)?.mgL ?? 0;
    const answer = await this.calc("nutrients", {
      volumeLitres: water.volumeLitres,
      feeds: [times(water.hand, this.#fed * mouths), times(water.feeders, this.#dropped * mouths)],
      exchange: { fraction, everyDays: every },
      exportMgLPerDay: { [ion.ion]: Math.max(0, ion.export?.value ?? 0) },
      start: { [`${ion.ion}MgL`]: start },
      wantedPeak: { [`${ion.ion}MgL`]: ion.wantedMgL },
      days: monthDays,
    });
    return answer[ion.ion];
  }

  /** One more fish wants so much more of the same food. @param {Water} water */
  async #moreMouths(water) {
    if (!this.#more || !water.dueKj) return 1;
    const one = await this.calc("ration", { temperatureC: this.temperatureC, fish: [{ id: "one", weightGrams: this.#more }] });
    return 1 + (one.energyKj?.value ?? 0) / water.dueKj;
  }

  /**
   * @param {string} name @param {string} words @param {number[]} options @param {number} chosen
   * @param {(n: number) => string} say @param {(n: number) => void} take
   */
  #choice(name, words, options, chosen, say, take) {
    return html`<div class="field"><label for=${`what-if-${name}`}>${words}</label>
      <select id=${`what-if-${name}`} @change=${(/** @type {Event} */ { target }) => {
        take(Number(/** @type {HTMLSelectElement} */ (target).value));
        this.requestUpdate();
      }}>${options.map((option) => html`<option value=${option} ?selected=${option === chosen}>${say(option)}</option>`)}</select></div>`;
  }
}

/** @param {Ion} ion @param {any} answer undefined while it is being reckoned for the first time @param {number} every */
function row(ion, answer, every) {
  const needed = answer?.exchangeFractionForWantedPeak;
  return html`<tr><th scope="row">${t(`water.${ion.ion}`)}</th><td>${answer ? level(answer.endOfDayMgL.at(-1)) : ""}</td><td>${answer ? level(answer.steadyPeakMgL) : ""}</td>
    <td>${!answer ? "" : needed === undefined || needed > 1 ? t("water.whatIf.notByExchange") : t("water.whatIf.part", { part: percent(needed), n: plain(every) })}</td></tr>`;
}

/** @param {Feed} feed @param {number} factor @returns {Feed} */
const times = (feed, factor) => ({ ...feed, gramsPerDay: feed.gramsPerDay * factor });

/** @param {number[]} options @param {number} wanted */
const nearest = (options, wanted) => options.reduce((best, one) => (Math.abs(one - wanted) < Math.abs(best - wanted) ? one : best));
