import { html } from "lit";
import { Element } from "../ui/element.js";
import { icon } from "../ui/icons.js";
import { grams, t } from "../text/index.js";
import { summon } from "../ui/summon.js";
import { countOf, gramsOf, nothingMore } from "./measures.js";
/** @import { TrayExtras, TrayItem, MeasureChoice, NamedKey } from "./measures.js" */

/**
 * The feeding being put together: its foods, the one being measured, and the button that records it.
 * @fires feeding-tray-open - the place of the item to measure
 * @fires feeding-tray-drop - the place of the item to leave out
 * @fires feeding-tray-extras - what is said of the feeding besides its foods
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
    now: { type: Number },
    cautions: { attribute: false },
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
    this.extras = nothingMore();
    /** Minutes since 1970 by the clock where the tank stands. */
    this.now = 0;
    /** @type {string[]} */
    this.cautions = [];
  }

  /** What may be said besides was looked at: few feedings need it, and even folded away its fields would hold up the first tap. */
  #unfolded = false;

  willUpdate() {
    if (!this.items.length) this.#unfolded = false;
  }

  render() {
    if (!this.items.length) return html`<p class="empty">${t("tray.empty")}</p>`;
    return html`
      <section aria-label=${t("tray.label")}>
        <div class="open-part">
          <ul>${this.items.map((item, place) => this.#item(item, place))}</ul>
          ${this.#more()}
          ${this.cautions.map((caution) => html`<p class="caution">${caution}</p>`)}
        </div>
        <button type="button" class="deed" @click=${() => this.say("feeding-tray-record")}>
          ${t("tray.record")} <small>${grams(gramsOf(this.items))}</small>
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
    return html`
      <details @toggle=${this.#unfold}>
        <summary>${t("tray.more")}</summary>
        ${this.#unfolded ? html`<tray-extras .item=${item} .foodName=${item ? this.foodNames.get(item.food) ?? item.food : ""}
          .fish=${this.fish} .extras=${this.extras} .now=${this.now}></tray-extras>` : ""}
      </details>`;
  }

  #unfold() {
    this.#unfolded = true;
    summon("tray-extras", async () => (await import("./tray-extras.js")).TrayExtrasForm);
    this.requestUpdate();
  }
}
