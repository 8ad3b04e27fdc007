import { html } from "lit";
import { live } from "lit-html/directives/live.js";
import { Element } from "../ui/element.js";
import { minutesInDay } from "./measures.js";
import { summonPicker } from "../photo/index.js";
import { t, written } from "../text/index.js";
import { typed } from "../text/units.js";
/** @import { NamedKey, TrayExtras, TrayItem } from "./measures.js" */

const agoes = [0, 5, 10, 20, 30, 60, 120, 240];
const longestNote = 500;
const daysBack = 366;
const MINUTE = 60_000;

/**
 * What is said of a feeding besides its foods: all of it may be left out.
 * @fires feeding-tray-extras - all of it, with what was changed
 * @fires measure-steps-change - the open food, given to one fish or to all
 */
export class TrayExtrasForm extends Element {
  static properties = { item: { attribute: false }, foodName: {}, fish: { attribute: false }, extras: { attribute: false }, now: { type: Number } };

  constructor() {
    super();
    /** @type {TrayItem | undefined} */
    this.item = undefined;
    this.foodName = "";
    /** @type {NamedKey[]} */
    this.fish = [];
    /** @type {TrayExtras | null} */
    this.extras = null;
    /** Minutes since 1970 by the clock where the tank stands. */
    this.now = 0;
  }

  connectedCallback() {
    super.connectedCallback();
    summonPicker();
  }

  render() {
    const { extras, item } = this;
    if (!extras) return "";
    return html`
      <label>${t("tray.note")}
        <textarea rows="2" maxlength=${longestNote} .value=${extras.note} @change=${(/** @type {Event} */ event) => this.#say({ note: textOf(event).trim() })}></textarea></label>
      <photo-picker .picture=${extras.picture} @photo-picker-choose=${(/** @type {CustomEvent<Blob | null>} */ { detail }) => this.#say({ picture: detail })}></photo-picker>
      <label>${t("tray.when")}
        <select name="when" @change=${(/** @type {Event} */ event) => this.#when(textOf(event))}>
          ${agoes.map((ago) => html`<option value=${ago} ?selected=${extras.then === null && ago === extras.minutesAgo}>${spoken(ago)}</option>`)}
          <option value="then" ?selected=${extras.then !== null}>${t("tray.ago.other")}</option>
        </select></label>
      ${extras.then === null ? "" : html`<label>${t("tray.then")}
        <input type="datetime-local" name="then" .value=${live(shownAt(extras.then))} min=${shownAt(this.#earliest)} max=${shownAt(this.now)}
          @change=${(/** @type {Event} */ event) => this.#then(minutesOf(event))} @blur=${(/** @type {Event} */ event) => this.#thenLeft(minutesOf(event))}></label>`}
      ${item ? html`<label>${t("tray.byHand", { name: this.foodName })}
        <select @change=${(/** @type {Event} */ event) => this.say("measure-steps-change", { ...item, fish: textOf(event) || null })}>
          <option value="" ?selected=${!item.fish}>${t("tray.wholeTank")}</option>
          ${this.fish.map(({ key, name }) => html`<option value=${key} ?selected=${item.fish === key}>${name}</option>`)}
        </select></label>
        ${item.fish ? html`<p class="caution">${t("caution.hand")}</p>` : ""}` : ""}
      <label>${t("tray.leftover")}
        <input type="text" inputmode="decimal" autocomplete="off" .value=${live(extras.leftoverGrams === null ? "" : written(extras.leftoverGrams))}
          @change=${(/** @type {Event} */ event) => this.#say({ leftoverGrams: typed(textOf(event)) >= 0 ? typed(textOf(event)) : null })}></label>
      <fieldset>
        <legend>${t("tray.refused")}</legend>
        <div class="chips pick">${this.fish.map(({ key, name }) => html`
          <button type="button" class="chip" aria-pressed=${extras.refusedBy.includes(key)}
            @click=${() => this.#refused(extras.refusedBy, key)}>${name}</button>`)}</div>
      </fieldset>`;
  }

  /** From the list; for another day, yesterday's same time is where most begin. @param {string} chosen */
  #when(chosen) {
    this.#say(chosen === "then" ? { minutesAgo: 0, then: this.now - minutesInDay } : { minutesAgo: Number(chosen), then: null });
  }

  /** A year says enough; what is further back is a slip of the keys. */
  get #earliest() {
    return this.now - daysBack * minutesInDay;
  }

  /** While a day is being typed it passes through others: only one that can be meant is taken, none is put in its place. @param {number} then */
  #then(then) {
    if (then >= this.#earliest && then <= this.now) this.#say({ then });
  }

  /** What has not come yet is not written down: the latest is now. @param {number} then */
  #thenLeft(then) {
    if (Number.isFinite(then)) this.#say({ then: Math.min(Math.max(then, this.#earliest), this.now) });
    this.requestUpdate();
  }

  /** @param {string[]} refusedBy @param {string} key */
  #refused(refusedBy, key) {
    this.#say({ refusedBy: refusedBy.includes(key) ? refusedBy.filter((one) => one !== key) : [...refusedBy, key] });
  }

  /** @param {Partial<TrayExtras>} changed */
  #say(changed) {
    this.say("feeding-tray-extras", { ...this.extras, ...changed });
  }
}

/** As a field for day and time has it. @param {number} minutes since 1970, by the clock where the tank stands */
const shownAt = (minutes) => new Date(minutes * MINUTE).toISOString().slice(0, 16);

/** NaN while it is not whole. @param {Event} event */
const minutesOf = (event) => Date.parse(`${textOf(event)}Z`) / MINUTE;

/** @param {Event} event */
const textOf = ({ target }) => /** @type {HTMLInputElement} */ (target).value;

/** @param {number} minutes */
const spoken = (minutes) => (!minutes ? t("tray.ago.now") : minutes < 60 ? t("tray.ago.minutes", { count: minutes }) : t("tray.ago.hours", { count: minutes / 60 }));
