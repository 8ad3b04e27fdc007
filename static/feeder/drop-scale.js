import { html } from "lit";
import { Asked } from "../ui/asked.js";
import { Element } from "../ui/element.js";
import { grams, percent, plain, range, t } from "../text/index.js";
import { typed } from "../text/units.js";
/** @import { Desk } from "../types.js" */

const precision = 0.05;

/**
 * Weighing drops one after the other: each weight tapped in, and at once what they say of the next.
 * @fires drop-scale-done - {grams, dropsPerWeighing, level}
 */
export class DropScale extends Element {
  static properties = { calc: { attribute: false } };

  /** @type {number[]} */
  #weights = [];
  #together = 1;
  #level = "full";
  #fault = "";
  /** @type {Asked<any>} */
  #told = new Asked(this);

  constructor() {
    super();
    /** @type {Desk["calc"]} */
    this.calc = async () => ({});
  }

  render() {
    const told = this.#weights.length > 1 ? this.#told.of([this.#weights, this.#together], () =>
      this.calc("drops", { weighingsGrams: this.#weights, dropsPerWeighing: this.#together, precision })) : null;
    return html`
      <form novalidate @submit=${this.#add}>
        <div class="field"><label for="drops-together">${t("feeder.weigh.together")}</label>
          <input id="drops-together" name="together" inputmode="numeric" autocomplete="off" value=${this.#together} ?disabled=${this.#weights.length > 0}
            @change=${this.#chooseTogether}></div>
        <div class="field"><label for="drops-level">${t("feeder.weigh.level")}</label>
          <select id="drops-level" @change=${this.#chooseLevel}>${["full", "low", ""].map((level) => html`<option value=${level}>${t(`feeder.level.${level || "between"}`)}</option>`)}</select></div>
        <div class="field"><label for="drops-weight">${t("feeder.weigh.weight", { n: this.#weights.length + 1 })} <small>g</small></label>
          <div class="row"><input id="drops-weight" name="weight" inputmode="decimal" autocomplete="off" aria-describedby="drops-fault" aria-invalid=${this.#fault !== ""}>
            <button class="firm">${t("feeder.weigh.add")}</button></div>
          <p class="fault" id="drops-fault">${this.#fault}</p></div>
      </form>
      ${this.#weights.length ? html`<ul class="weights">${this.#weights.map((weight, place) => html`
        <li>${grams(weight)} <button type="button" class="quiet" aria-label=${t("feeder.weigh.drop", { weight: grams(weight) })}
          @click=${() => this.#remove(place)}>${t("feeder.weigh.remove")}</button></li>`)}</ul>` : ""}
      <div role="status">${told ? this.#said(told) : html`<p>${t("feeder.weigh.first")}</p>`}</div>
      <button type="button" class="deed" ?disabled=${!told || told.errors} @click=${this.#done}>${t("feeder.weigh.save")}</button>`;
  }

  /** @param {any} told the engine's answer */
  #said(told) {
    if (told.errors) return html`<p class="fault">${t("feeder.fault.apart")}</p>`;
    const { gramsPerDrop, coefficientOfVariation, weighingsNeeded } = told;
    const more = weighingsNeeded - this.#weights.length;
    return html`<p><output><strong>${grams(gramsPerDrop.value)}</strong></output> ${t("feeder.weigh.aDrop")}
        <small>${t("feeder.weigh.between", { span: range(gramsPerDrop.low, gramsPerDrop.high, grams), spread: percent(coefficientOfVariation) })}</small></p>
      <p>${more > 0 ? t("feeder.weigh.more", { count: more, n: plain(more) }) : t("feeder.weigh.enough")}</p>`;
  }

  /** @param {Event} event */
  #chooseTogether(event) {
    const chosen = typed(/** @type {HTMLInputElement} */ (event.target).value);
    this.#together = Number.isInteger(chosen) && chosen >= 1 && chosen <= 1000 ? chosen : 1;
    this.requestUpdate();
  }

  /** @param {Event} event */
  #chooseLevel(event) {
    this.#level = /** @type {HTMLSelectElement} */ (event.target).value;
  }

  /** @param {SubmitEvent} event */
  #add(event) {
    event.preventDefault();
    const input = /** @type {HTMLInputElement} */ (this.querySelector("[name=weight]"));
    const weight = typed(input.value);
    this.#fault = weight > 0 && weight <= 10_000 ? "" : t("feeder.fault.weight");
    if (!this.#fault) {
      this.#weights = [...this.#weights, weight];
      input.value = "";
    }
    input.focus();
    this.requestUpdate();
  }

  /** @param {number} place */
  #remove(place) {
    this.#weights = this.#weights.filter((_, i) => i !== place);
    this.requestUpdate();
  }

  #done() {
    this.say("drop-scale-done", { grams: this.#weights, dropsPerWeighing: this.#together, level: this.#level });
  }
}
