import { html } from "lit";
import { live } from "lit-html/directives/live.js";
import { Element } from "../ui/element.js";
import { icon } from "../ui/icons.js";
import { measureName } from "../ui/names.js";
import { grams, t, written } from "../text/index.js";
import { typed } from "../text/units.js";
import { countOf, spokenCount } from "./measures.js";
/** @import { TrayItem, MeasureChoice, NamedKey } from "./measures.js" */

const quickCounts = [0.5, 1, 2, 3];
const quickGrams = [2, 5, 10, 20];

/**
 * How much of one food: big steps in the measure people use, and what was soaked on it.
 * @fires measure-steps-change - the item as it now is
 */
export class MeasureSteps extends Element {
  static properties = {
    item: { attribute: false },
    measures: { attribute: false },
    supplements: { attribute: false },
  };

  /** What stands in the field for grams as long as it is typed in. */
  #typed = "";

  constructor() {
    super();
    /** @type {TrayItem | null} */
    this.item = null;
    /** @type {MeasureChoice[]} */
    this.measures = [];
    /** @type {NamedKey[]} */
    this.supplements = [];
  }

  render() {
    const { item } = this;
    if (!item) return "";
    const { measure, count } = item;
    const inGrams = measure.name === "g";
    return html`
      <div class="steps">
        <button type="button" class="step" aria-label=${t("steps.less")} ?disabled=${count <= least(item)}
          @click=${() => this.#count(stepped(item, -1))}>${icon("minus")}</button>
        <output aria-live="polite">
          <strong>${spokenCount(count)}</strong> ${inGrams ? t("measure.gramsName") : measureName(measure.name)}
          ${inGrams ? "" : html`<small class="figure ${measure.basis}">${t(`steps.basis.${measure.basis}`, { mass: grams(item.grams) })}${measure.size ? `, ${measureName(measure.size)}` : ""}</small>`}
        </output>
        <button type="button" class="step" aria-label=${t("steps.more")}
          @click=${() => this.#count(stepped(item, 1))}>${icon("plus")}</button>
      </div>
      <div class="chips" role="group" aria-label=${t("steps.quick")}>
        ${(inGrams ? quickGrams : quickCounts).map((quick) => html`
          <button type="button" class="chip" aria-pressed=${quick === count} aria-label=${countOf(quick, measure.name)}
            @click=${() => this.#count(quick)}>${spokenCount(quick)}</button>`)}
        ${this.measures.length > 1 ? this.measures.map((choice) => html`
          <button type="button" class="chip" aria-pressed=${choice.name === measure.name}
            @click=${() => this.#measure(choice)}>${measureName(choice.name)}${choice.name === "g" ? "" : html` <small class="figure ${choice.basis}">${grams(choice.grams)}</small>`}</button>`) : ""}
        <label class="in-grams"><span>${t("steps.weighed")}</span>
          <input type="text" inputmode="decimal" autocomplete="off" aria-label=${t("steps.weighedLabel")}
            .value=${live(this.#inGrams())} @input=${this.#weighed} @change=${this.#settle}>
        </label>
      </div>
      ${this.supplements.length ? html`
        <div class="chips soak" role="group" aria-label=${t("steps.soaked")}>
          <span class="lead">${t("steps.soaked")}</span>
          ${this.supplements.map(({ key, name }) => html`
            <button type="button" class="chip" aria-pressed=${item.supplements.includes(key)}
              @click=${() => this.#soak(key)}>${name}</button>`)}
        </div>` : ""}`;
  }

  /** @param {number} count */
  #count(count) {
    const item = /** @type {TrayItem} */ (this.item);
    this.#change({ ...item, count, grams: count * item.measure.grams });
  }

  /** @param {MeasureChoice} measure */
  #measure(measure) {
    const item = /** @type {TrayItem} */ (this.item);
    const count = measure.name === "g" ? Math.max(1, Math.round(item.grams)) : 1;
    this.#change({ ...item, measure, count, grams: count * measure.grams });
  }

  /** What was typed stays as it was typed while it means the same: half a decimal is no reason to take the point away. */
  #inGrams() {
    const { measure, count } = /** @type {TrayItem} */ (this.item);
    if (measure.name !== "g") return this.#typed;
    return typed(this.#typed) === count ? this.#typed : written(count);
  }

  /** Whoever has done typing sees what counts. */
  #settle() {
    this.#typed = "";
    this.requestUpdate();
  }

  /** @param {Event} event */
  #weighed(event) {
    this.#typed = /** @type {HTMLInputElement} */ (event.target).value;
    const weighed = typed(this.#typed);
    if (!(weighed > 0)) return;
    const item = /** @type {TrayItem} */ (this.item);
    this.#change({ ...item, measure: { name: "g", grams: 1, basis: "weighed" }, count: weighed, grams: weighed });
  }

  /** @param {string} key */
  #soak(key) {
    const item = /** @type {TrayItem} */ (this.item);
    const supplements = item.supplements.includes(key)
      ? item.supplements.filter((one) => one !== key) : [...item.supplements, key];
    this.#change({ ...item, supplements });
  }

  /** @param {TrayItem} item */
  #change(item) {
    this.say("measure-steps-change", item);
  }
}

/** @param {TrayItem} item */
const least = ({ measure }) => (measure.name === "g" ? 0.5 : 0.25);

/**
 * The next amount up or down: quarters below one, halves to three, then whole ones.
 * @param {TrayItem} item
 * @param {1 | -1} way
 */
function stepped({ count, measure }, way) {
  const from = way > 0 ? count : count - 0.001;
  const step = measure.name === "g" ? (from < 10 ? 1 : from < 50 ? 5 : 10) : from < 1 ? 0.25 : from < 3 ? 0.5 : 1;
  const next = way > 0 ? Math.floor(count / step + 1.001) * step : Math.ceil(count / step - 1.001) * step;
  return Math.max(measure.name === "g" ? 0.5 : 0.25, next);
}
