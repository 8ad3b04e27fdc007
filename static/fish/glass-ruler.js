import { html } from "lit";
import { Element } from "../ui/element.js";
import { summonPicker } from "../photo/index.js";
import { summon } from "../ui/summon.js";
import { figure, range, t } from "../text/index.js";
import { metric, shown, typed, unitOf } from "../text/units.js";
import { compare } from "./compare.js";
/** @import { Constant } from "../types.js" */

/**
 * Measures a fish against something of known length: on a picture, end to end, or by two lengths read on one ruler.
 * @fires glass-ruler-measured - the length in cm, its error, and the picture if it is to be kept
 */
export class GlassRuler extends Element {
  static properties = { constants: { attribute: false }, key: {} };

  /** @type {Blob | null} */
  #picture = null;
  #marked = { object: 0, fish: 0 };
  /** What was typed: the object's true length, and both as read on a ruler. */
  #typed = { object: "", onRuler: "", fish: "" };
  #keeps = true;

  constructor() {
    super();
    /** @type {Map<string, Constant>} */
    this.constants = new Map();
    this.key = "";
  }

  connectedCallback() {
    super.connectedCallback();
    summonPicker();
    summon("glass-picture", async () => (await import("./glass-picture.js")).GlassPicture);
  }

  /** @param {Map<string, unknown>} changes */
  willUpdate(changes) {
    if (changes.has("key")) this.#choose(null);
  }

  render() {
    const result = this.#result();
    return html`<h2>${t("glass.measure")}</h2>
      <p>${t("glass.measureMeans")}</p>
      ${this.#field("object", t("glass.object"), t("glass.objectHint"))}
      ${this.#picture ? this.#onPicture(this.#picture) : html`
        <photo-picker .picture=${null} @photo-picker-choose=${(/** @type {CustomEvent<Blob>} */ { detail }) => this.#choose(detail)}></photo-picker>
        <p>${t("glass.orRuler")}</p>
        ${this.#field("onRuler", t("glass.onRuler"))} ${this.#field("fish", t("glass.fishOnRuler"))}`}
      <p class="verdict" role="status">${result ? html`<strong>≈ ${length(result.cm)}</strong>
        ${t("glass.between", { span: range(result.cm - result.errorCm, result.cm + result.errorCm, length) })}` : t(this.#asks())}</p>
      ${result ? html`<p><small>${t("glass.unsure")}</small></p>
        <button type="button" class="deed" @click=${() => this.#done(result)}>${t("glass.take")}</button>` : ""}`;
  }

  /** @param {"object" | "onRuler" | "fish"} name @param {string} label @param {string} [hint] */
  #field(name, label, hint) {
    return html`<label class="field">${label} <small>${unitOf("length")}</small>
      <input inputmode="decimal" autocomplete="off" name=${name} .value=${this.#typed[name]} @input=${(/** @type {InputEvent} */ event) => {
        this.#typed[name] = /** @type {HTMLInputElement} */ (event.target).value;
        this.requestUpdate();
      }}>${hint ? html`<small>${hint}</small>` : ""}</label>`;
  }

  /** @param {Blob} picture */
  #onPicture(picture) {
    return html`<glass-picture .picture=${picture} @glass-picture-read=${this.#read}></glass-picture>
      <label class="row"><input type="checkbox" .checked=${this.#keeps} @change=${(/** @type {Event} */ event) => {
        this.#keeps = /** @type {HTMLInputElement} */ (event.target).checked;
      }}> ${t("glass.keepPhoto")}</label>
      <p><button type="button" class="quiet" @click=${() => this.#choose(null)}>${t("photo.leaveOut")}</button></p>`;
  }

  /** @param {CustomEvent<{ object: number, fish: number }>} event */
  #read({ detail }) {
    this.#marked = detail;
    this.requestUpdate();
  }

  #result() {
    const beside = this.#constant("length_error_beside");
    const objectCm = metric("length", typed(this.#typed.object));
    const read = this.#picture ? { ...this.#marked, reading: this.#constant("finger_reading_px") }
      : { object: metric("length", typed(this.#typed.onRuler)), fish: metric("length", typed(this.#typed.fish)), reading: this.#constant("ruler_reading_cm") };
    return objectCm > 0 && read.object > 0 && read.fish > 0 ? compare({ objectCm, ...read, beside }) : null;
  }

  /** What is still missing. */
  #asks() {
    if (!(typed(this.#typed.object) > 0)) return "glass.asks.object";
    if (!this.#picture) return "glass.asks.both";
    return this.#marked.object ? "glass.asks.fishLine" : "glass.asks.objectLine";
  }

  /** @param {string} key */
  #constant(key) {
    return Number(this.constants.get(key)?.value);
  }

  /** @param {Blob | null} picture */
  #choose(picture) {
    this.#picture = picture;
    this.#marked = { object: 0, fish: 0 };
    this.requestUpdate();
  }

  /** @param {{ cm: number, errorCm: number }} result */
  #done({ cm, errorCm }) {
    this.say("glass-ruler-measured", { cm: Number(cm.toFixed(2)), errorCm: Number(errorCm.toFixed(2)), picture: this.#keeps ? this.#picture : null });
  }
}

/** @param {number} cm */
const length = (cm) => figure(shown("length", cm), unitOf("length"));
