import { html } from "lit";
import { Element } from "../ui/element.js";
import { summonPicker } from "../photo/index.js";
import { t } from "../text/index.js";
/** @import { Feeding } from "../types.js" */

const longestNote = 500;

/**
 * Puts a recorded feeding right: its time, its note, and a photo that came late.
 * @fires feeding-edit-done - only what is to change; null: nothing
 */
export class FeedingEdit extends Element {
  static properties = { feeding: { attribute: false }, latest: { type: Number } };

  #minute = 0;
  #note = "";
  /** @type {Blob | null} */
  #picture = null;

  constructor() {
    super();
    /** @type {Feeding | null} */
    this.feeding = null;
    this.latest = 0;
  }

  connectedCallback() {
    super.connectedCallback();
    summonPicker();
    this.#minute = this.feeding?.minute ?? 0;
    this.#note = this.feeding?.note ?? "";
  }

  render() {
    const minute = this.#minute;
    const text = `${String(Math.floor(minute / 60)).padStart(2, "0")}:${String(minute % 60).padStart(2, "0")}`;
    return html`<div class="timing">
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

  #keep() {
    const { feeding } = this;
    const note = this.#note.trim();
    this.say("feeding-edit-done", {
      ...(this.#minute === feeding?.minute ? {} : { minute: this.#minute }),
      ...(note === (feeding?.note ?? "") ? {} : { note }),
      ...(this.#picture ? { picture: this.#picture } : {}),
    });
  }
}
