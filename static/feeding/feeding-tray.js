import { html } from "lit";
import { live } from "lit-html/directives/live.js";
import { Element } from "../ui/element.js";
import { icon } from "../ui/icons.js";
import { grams, t, written } from "../text/index.js";
import { typed } from "../text/units.js";
import { countOf } from "./measures.js";
/** @import { TrayExtras, TrayItem, MeasureChoice, NamedKey } from "./measures.js" */

/**
 * The feeding being put together: its foods, the one being measured, and the button that records it.
 * @fires feeding-tray-open - the place of the item to measure
 * @fires feeding-tray-drop - the place of the item to leave out
 * @fires feeding-tray-extras - refused, leftovers and the fish fed by hand
 * @fires feeding-tray-record
 */
export class FeedingTray extends Element {
  static properties = {
    items: { attribute: false },
    open: { type: Number },
    measures: { attribute: false },
    supplements: { attribute: false },
    foodNames: { attribute: false },
    fish: { attribute: false },
    extras: { attribute: false },
    cautions: { attribute: false },
    busy: { type: Boolean },
  };

  constructor() {
    super();
    /** @type {TrayItem[]} */
    this.items = [];
    this.open = 0;
    /** @type {MeasureChoice[]} */
    this.measures = [];
    /** @type {NamedKey[]} */
    this.supplements = [];
    /** @type {Map<string, string>} */
    this.foodNames = new Map();
    /** @type {NamedKey[]} */
    this.fish = [];
    /** @type {TrayExtras} */
    this.extras = { leftoverGrams: null, refusedBy: [] };
    /** @type {string[]} */
    this.cautions = [];
    this.busy = false;
  }

  render() {
    if (!this.items.length) return html`<p class="empty">${t("tray.empty")}</p>`;
    const total = this.items.reduce((sum, item) => sum + item.grams, 0);
    return html`
      <section aria-label=${t("tray.label")}>
        <div class="open-part">
          <ul>${this.items.map((item, place) => this.#item(item, place))}</ul>
          ${this.#more()}
          ${this.cautions.map((caution) => html`<p class="caution">${caution}</p>`)}
        </div>
        <button type="button" class="deed" ?disabled=${this.busy} @click=${() => this.say("feeding-tray-record")}>
          ${t("tray.record")} <small>${grams(total)}</small>
        </button>
      </section>`;
  }

  /** @param {TrayItem} item @param {number} place */
  #item(item, place) {
    const name = this.foodNames.get(item.food) ?? item.food;
    const open = place === this.open;
    return html`
      <li class=${open ? "open" : ""}>
        <div class="row apart">
          <button type="button" class="name" aria-expanded=${open} @click=${() => this.say("feeding-tray-open", place)}>
            <strong>${name}</strong>${open ? "" : html` <small>${countOf(item.count, item.measure.name)}</small>`}
          </button>
          <button type="button" class="quiet" aria-label=${t("tray.leaveOut", { name })}
            @click=${() => this.say("feeding-tray-drop", place)}>${icon("close")}</button>
        </div>
        ${open ? html`<measure-steps .item=${item} .measures=${this.measures}
          .supplements=${this.supplements}></measure-steps>` : ""}
      </li>`;
  }

  #more() {
    const item = this.items[this.open];
    const { leftoverGrams } = this.extras;
    return html`
      <details>
        <summary>${t("tray.more")}</summary>
        ${item ? html`<label>${t("tray.byHand", { name: this.foodNames.get(item.food) ?? item.food })}
          <select @change=${(/** @type {Event} */ event) => this.#byHand(item, event)}>
            <option value="" ?selected=${!item.fish}>${t("tray.wholeTank")}</option>
            ${this.fish.map(({ key, name }) => html`<option value=${key} ?selected=${item.fish === key}>${name}</option>`)}
          </select></label>
          ${item.fish ? html`<p class="caution">${t("caution.hand")}</p>` : ""}` : ""}
        <label>${t("tray.leftover")}
          <input type="text" inputmode="decimal" autocomplete="off" .value=${live(leftoverGrams === null ? "" : written(leftoverGrams))}
            @change=${this.#leftover}></label>
        <fieldset>
          <legend>${t("tray.refused")}</legend>
          <div class="chips pick">${this.fish.map(({ key, name }) => html`
            <button type="button" class="chip" aria-pressed=${this.extras.refusedBy.includes(key)}
              @click=${() => this.#refused(key)}>${name}</button>`)}</div>
        </fieldset>
      </details>`;
  }

  /** @param {TrayItem} item @param {Event} event */
  #byHand(item, event) {
    const fish = /** @type {HTMLSelectElement} */ (event.target).value || null;
    this.say("measure-steps-change", { ...item, fish });
  }

  /** @param {Event} event */
  #leftover(event) {
    const entered = typed(/** @type {HTMLInputElement} */ (event.target).value);
    this.say("feeding-tray-extras", { ...this.extras, leftoverGrams: entered >= 0 ? entered : null });
  }

  /** @param {string} key */
  #refused(key) {
    const { refusedBy } = this.extras;
    const next = refusedBy.includes(key) ? refusedBy.filter((one) => one !== key) : [...refusedBy, key];
    this.say("feeding-tray-extras", { ...this.extras, refusedBy: next });
  }
}
