import { html } from "lit";
import { metOrMore } from "../feeding/ration-line.js";
import { Element } from "../ui/element.js";
import { whyButton } from "../ui/figure.js";
import { grams, kj, percent, range, t } from "../text/index.js";
/** @import { Ration } from "../types.js" */

const firstFoods = 3;

/**
 * Today's ration: energy first, then what is left of it in grams of the foods this tank gets.
 * @fires ration-panel-why - which figure: due, given or remaining
 */
export class RationPanel extends Element {
  static properties = { ration: { attribute: false }, foodName: { attribute: false } };

  constructor() {
    super();
    /** @type {Ration | null} */
    this.ration = null;
    this.foodName = (/** @type {string} */ key) => key;
  }

  render() {
    const { ration } = this;
    if (!ration) return "";
    const { dueKj, givenKj, remainingKj, percentOfBodyWeight: body } = ration;
    return html`
      <h2>${t("ration.label")}</h2>
      <dl class="numbers">
        <div><dt><span>${t("ration.due")}</span>${this.#why("due", t("ration.due"))}</dt>
          <dd><output>${kj(dueKj.value)}</output><small>${t("ration.between", { span: range(dueKj.low, dueKj.high, kj) })}</small></dd></div>
        <div><dt><span>${t("ration.given")}</span>${this.#why("given", t("ration.given"))}</dt>
          <dd><output>${kj(givenKj.value)}</output><small>${t("ration.bySource", {
            hand: kj(ration.givenHandKj), feeder: kj(ration.givenFeederKj) })}</small></dd></div>
        <div><dt><span>${t("ration.stillDue")}</span>${this.#why("remaining", t("ration.stillDue"))}</dt>
          <dd><output>${kj(Math.max(0, remainingKj.value))}</output><small>${remainingKj.high > 0
            ? t("ration.between", { span: range(Math.max(0, remainingKj.low), remainingKj.high, kj) }) : metOrMore(ration)}</small></dd></div>
      </dl>
      <tide-line .due=${dueKj} .given=${givenKj} .hand=${ration.givenHandKj} .feeder=${ration.givenFeederKj}></tide-line>
      <p class="key"><span><i class="swatch given"></i>${t("tide.keyGiven")}</span>
        <span><i class="swatch feeder"></i>${t("tide.keyFeeder")}</span>
        <span><i class="swatch reach"></i>${t("tide.keyReach")}</span></p>
      ${remainingKj.value > 0 && ration.foods.length ? html`
        <h3>${t("ration.coveredBy")}</h3>
        ${this.#cover(ration.foods.slice(0, firstFoods))}
        ${ration.foods.length > firstFoods ? html`<details><summary>${t("ration.otherFoods")}</summary>
          ${this.#cover(ration.foods.slice(firstFoods))}</details>` : ""}` : ""}
      ${body ? html`<p><small>${t("ration.ofBody", {
        share: percent(body.value / 100), span: range(body.low / 100, body.high / 100, percent) })}</small></p>` : ""}`;
  }

  /** @param {import("../types.js").Ration["foods"]} foods */
  #cover(foods) {
    return html`<table class="cover"><tbody>${foods.map(({ food, grams: mass }) => html`
      <tr><th scope="row">${this.foodName(food)}</th>
        <td><strong>${grams(mass.value)}</strong></td><td><small>${range(mass.low, mass.high, grams)}</small></td></tr>`)}
    </tbody></table>`;
  }

  /** @param {"due" | "given" | "remaining"} which @param {string} about */
  #why(which, about) {
    return whyButton(() => this.say("ration-panel-why", which), about);
  }
}
