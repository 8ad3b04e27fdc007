import { html } from "lit";
import { live } from "lit-html/directives/live.js";
import { Element } from "../ui/element.js";
import { plain, t, written } from "../text/index.js";
import { metric, shown, typed, unitOf } from "../text/units.js";

/**
 * One field to be filled in. Numbers are handed in and out in metric units; the screen shows what the keeper chose.
 * @typedef {object} Field
 * @property {string} name
 * @property {string} label
 * @property {"text" | "password" | "number" | "choice" | "many" | "long"} [kind] text when not given
 * @property {string} [quantity] length, volume, temperature or mass: has a unit, and is turned
 * @property {string} [unit] of a number that is never turned
 * @property {number} [least]
 * @property {number} [most]
 * @property {boolean} [needed]
 * @property {string} [autocomplete] what the phone may fill in; a password is a new one when not said
 * @property {string | number | string[]} [value]
 * @property {string} [hint]
 * @property {{ value: string, label: string }[]} [options] of a choice, or of many
 * @property {(text: string) => string | undefined} [check] what is wrong with a text, if anything
 */

/** @typedef {Record<string, string | number | string[]>} Values only what was filled in */

/**
 * Asks for the fields of one record and says what is wrong beside the field that has it.
 * @fires record-form-done - the values
 */
export class RecordForm extends Element {
  static #made = 0;
  static properties = { fields: { attribute: false }, deed: {}, busy: { type: Boolean } };

  /** @type {Map<string, string>} what is wrong, by field */
  #faults = new Map();
  /** Two forms may stand on one page. */
  #own = `record-form-${(RecordForm.#made += 1)}`;

  constructor() {
    super();
    /** @type {Field[]} */
    this.fields = [];
    this.deed = "";
    this.busy = false;
  }

  render() {
    return html`<form novalidate @submit=${this.#submit}>
      ${this.fields.map((field) => this.#field(field))}
      <button class="deed" ?disabled=${this.busy}>${this.deed || t("setup.save")}</button>
    </form>`;
  }

  /** @param {Field} field */
  #field(field) {
    const { name, label, hint } = field;
    const fault = this.#faults.get(name);
    if (field.kind === "many") return this.#many(field);
    return html`<div class="field">
      <label for=${this.#id(name)}>${label}${unit(field) ? html` <small>${unit(field)}</small>` : ""}</label>
      ${this.#input(field, fault)}
      ${hint ? html`<small id=${`${this.#id(name)}-hint`}>${hint}</small>` : ""}
      <p class="fault" id=${`${this.#id(name)}-fault`}>${fault ?? ""}</p>
    </div>`;
  }

  /** @param {Field} field @param {string | undefined} fault */
  #input(field, fault) {
    const { name, kind = "text", needed = false, hint, options = [], autocomplete = kind === "password" ? "new-password" : "off" } = field;
    const told = `${this.#id(name)}-fault ${hint ? `${this.#id(name)}-hint` : ""}`;
    const text = asText(field);
    if (kind === "choice") {
      return html`<select id=${this.#id(name)} name=${name} aria-describedby=${told}>${options.map((option) =>
        html`<option value=${option.value} ?selected=${option.value === text}>${option.label}</option>`)}</select>`;
    }
    if (kind === "long") {
      return html`<textarea id=${this.#id(name)} name=${name} rows="6" aria-describedby=${told} .value=${live(text)}></textarea>`;
    }
    return html`<input id=${this.#id(name)} name=${name} type=${kind === "password" ? "password" : "text"}
      autocomplete=${autocomplete} inputmode=${kind === "number" ? "decimal" : "text"}
      aria-required=${needed} aria-invalid=${fault !== undefined} aria-describedby=${told} value=${text}>`;
  }

  /** @param {Field} field */
  #many({ name, label, hint, value, options = [] }) {
    const chosen = new Set(Array.isArray(value) ? value : []);
    const first = [...options].sort((a, b) => Number(chosen.has(b.value)) - Number(chosen.has(a.value)));
    return html`<fieldset class="field"><legend>${label}</legend>
      ${hint ? html`<small>${hint}</small>` : ""}
      <div class="many" tabindex="0" role="group" aria-label=${label}>${first.map((option) => html`<label class="row">
        <input type="checkbox" name=${name} value=${option.value} ?checked=${chosen.has(option.value)}> ${option.label}</label>`)}</div>
    </fieldset>`;
  }

  /** @param {string} name */
  #id(name) {
    return `${this.#own}-${name}`;
  }

  /** @param {SubmitEvent} event */
  async #submit(event) {
    event.preventDefault();
    const given = new FormData(/** @type {HTMLFormElement} */ (event.target));
    const read = this.fields.map((field) => (field.kind === "many"
      ? { field, value: given.getAll(field.name).map(String), fault: undefined }
      : { field, ...readField(field, String(given.get(field.name) ?? "")) }));
    this.#faults = new Map(read.flatMap(({ field, fault }) => (fault ? [[field.name, fault]] : [])));
    this.requestUpdate();
    await this.updateComplete;
    const first = this.fields.find(({ name }) => this.#faults.has(name));
    if (first) return /** @type {HTMLElement} */ (this.querySelector(`[name=${first.name}]`)).focus();
    this.say("record-form-done", Object.fromEntries(read.flatMap(({ field, value }) =>
      (value === undefined ? [] : [[field.name, value]]))));
  }
}

/** @param {Field} field */
const unit = ({ quantity, unit: fixed }) => (quantity ? unitOf(quantity) : fixed ?? "");

/** @param {Field} field */
function asText({ value, quantity }) {
  if (value === undefined || Number.isNaN(value)) return "";
  if (Array.isArray(value)) return "";
  return typeof value === "number" ? written(quantity ? Number(shown(quantity, value).toFixed(2)) : value) : value;
}

/**
 * @param {Field} field
 * @param {string} text
 * @returns {{ value?: string | number, fault?: string }}
 */
export function readField({ label, kind = "text", needed = false, quantity, unit: fixed, least = 0, most = Infinity, check }, text) {
  if (text.trim() === "") return needed ? { fault: t("setup.fault.needed", { label }) } : {};
  if (kind !== "number") return { value: text.trim(), fault: check?.(text) };
  const entered = typed(text);
  const value = quantity ? metric(quantity, entered) : entered;
  if (value >= least && value <= most) return { value };
  const turn = (/** @type {number} */ end) => plain(Number((quantity ? shown(quantity, end) : end).toPrecision(3)));
  return { fault: t("setup.fault.number", { label, least: turn(least), most: turn(most), unit: quantity ? unitOf(quantity) : fixed ?? "" }) };
}
