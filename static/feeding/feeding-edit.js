import { html } from "lit";
import { Element } from "../ui/element.js";
import { measureName } from "../ui/names.js";
import { summonPicker } from "../photo/index.js";
import { t, written } from "../text/index.js";
import { typed } from "../text/units.js";
import { amountOf, isMoreThanGiven, withAmount } from "./feeding-body.js";
import { gramsOf } from "./measures.js";
/** @import { Feeding } from "../types.js" */

const longestNote = 500;

/**
 * Puts a recorded feeding right: how much it was, what was left, its time, its note, and a photo that came late.
 * @fires feeding-edit-done - only what is to change; null: nothing
 */
export class FeedingEdit extends Element {
  static properties = { feeding: { attribute: false }, names: { attribute: false }, latest: { type: Number } };

  #minute = 0;
  /** As typed: of each food, in the measure it was given with. @type {string[]} */
  #amounts = [];
  /** As typed, in grams. */
  #leftover = "";
  /** The name of the field that cannot be used. */
  #fault = "";
  #note = "";
  /** @type {Blob | null} */
  #picture = null;

  constructor() {
    super();
    /** @type {Feeding | null} */
    this.feeding = null;
    /** @type {{ food: (key: string) => string } | null} */
    this.names = null;
    this.latest = 0;
  }

  connectedCallback() {
    super.connectedCallback();
    summonPicker();
    this.#minute = this.feeding?.minute ?? 0;
    this.#note = this.feeding?.note ?? "";
    this.#amounts = this.feeding?.items.map((item) => written(amountOf(item))) ?? [];
    this.#leftover = written(this.feeding?.leftoverGrams ?? 0);
  }

  render() {
    const minute = this.#minute;
    const text = `${String(Math.floor(minute / 60)).padStart(2, "0")}:${String(minute % 60).padStart(2, "0")}`;
    return html`
      ${this.feeding?.items.map((item, place) => this.#number(`item-${place}`, html`${this.names?.food(item.food)} <small>${item.count && item.measure ? measureName(item.measure) : t("measure.gramsName")}</small>`,
        this.#amounts[place], (text) => (this.#amounts[place] = text)))}
      ${this.#number("leftover", t("tray.leftover"), this.#leftover, (text) => (this.#leftover = text))}
      <div class="timing">
        <button type="button" class="chip" @click=${() => this.#set(minute - 5)} aria-label=${t("row.earlier")}>−5</button>
        <label><span class="unseen">${t("row.time")}</span>
          <input type="time" .value=${text} @change=${this.#typed}></label>
        <button type="button" class="chip" @click=${() => this.#set(minute + 5)} aria-label=${t("row.later")}>+5</button>
      </div>
      <label>${t("tray.note")}<textarea rows="2" maxlength=${longestNote} .value=${this.#note}
        @input=${(/** @type {Event} */ event) => (this.#note = /** @type {HTMLTextAreaElement} */ (event.target).value)}></textarea></label>
      <photo-picker .picture=${this.#picture} @photo-picker-choose=${this.#chosen}></photo-picker>
      <p class="row"><button type="button" class="firm" @click=${this.#keep}>${t("row.keepTime")}</button>
        <button type="button" class="quiet" @click=${() => this.say("feeding-edit-done", null)}>${t("cancel")}</button></p>`;
  }

  /** @param {string} name @param {unknown} label @param {string} text @param {(text: string) => void} take */
  #number(name, label, text, take) {
    const wrong = this.#fault === name;
    return html`<label>${label}<input type="text" inputmode="decimal" autocomplete="off" name=${name} aria-invalid=${wrong} .value=${text}
        @input=${(/** @type {Event} */ event) => take(/** @type {HTMLInputElement} */ (event.target).value)}>
      ${wrong ? html`<small class="fault" role="alert">${t(name === "leftover" ? "row.badLeftover" : "row.badAmount")}</small>` : ""}</label>`;
  }

  /** @param {number} minute */
  #set(minute) {
    this.#minute = Math.min(this.latest, Math.max(0, minute));
    this.requestUpdate();
  }

  /** @param {Event} event */
  #typed(event) {
    const [hours, minutes] = /** @type {HTMLInputElement} */ (event.target).value.split(":").map(Number);
    if (Number.isFinite(hours) && Number.isFinite(minutes)) this.#set(hours * 60 + minutes);
  }

  /** @param {CustomEvent<Blob | null>} event */
  #chosen({ detail }) {
    this.#picture = detail;
    this.requestUpdate();
  }

  async #keep() {
    const feeding = /** @type {Feeding} */ (this.feeding);
    const amounts = this.#amounts.map(typed);
    const leftoverGrams = this.#leftover.trim() === "" ? 0 : typed(this.#leftover);
    const wrong = amounts.findIndex((amount) => !(amount > 0));
    const given = gramsOf(feeding.items.map((item, place) => withAmount(item, amounts[place])));
    const kept = leftoverGrams === (feeding.leftoverGrams ?? 0);
    this.#fault = wrong >= 0 ? `item-${wrong}` : kept || (leftoverGrams >= 0 && !isMoreThanGiven(leftoverGrams, given)) ? "" : "leftover";
    if (this.#fault) {
      this.requestUpdate();
      await this.updateComplete;
      return /** @type {HTMLElement} */ (this.querySelector(`[name=${this.#fault}]`)).focus();
    }
    const note = this.#note.trim();
    const corrected = feeding.items.map((item, place) => this.#amounts[place] !== written(amountOf(item)));
    this.say("feeding-edit-done", {
      ...(corrected.includes(true) ? { items: feeding.items.map((item, place) => withAmount(item, corrected[place] ? amounts[place] : amountOf(item))) } : {}),
      ...(kept ? {} : { leftoverGrams }),
      ...(this.#minute === feeding.minute ? {} : { minute: this.#minute }),
      ...(note === (feeding.note ?? "") ? {} : { note }),
      ...(this.#picture ? { picture: this.#picture } : {}),
    });
  }
}
