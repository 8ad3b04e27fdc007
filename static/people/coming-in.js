import { html } from "lit";
import { NoAnswer, SaidNo } from "../sync/http.js";
import { t } from "../text/index.js";
import { Element } from "../ui/element.js";
import { fieldsRefused } from "./asking.js";
/** @import { Field, Values } from "../setup/record-form.js" */

/** The ground that the first start and joining stand on: a form, and what the server said against it. */
export class ComingIn extends Element {
  static properties = { trouble: { state: true }, waiting: { state: true } };

  constructor() {
    super();
    /** @type {string} */
    this.trouble = "";
    this.waiting = false;
  }

  /** @param {string} heading @param {string} intro @param {Field[]} fields @param {string} deed @param {(values: Values) => Promise<void>} enter */
  page(heading, intro, fields, deed, enter) {
    return html`<section class="page card stack">
      <hgroup><p>${t("app.name")}</p><h1>${heading}</h1></hgroup>
      <p>${intro}</p>
      <record-form .fields=${fields} .deed=${deed} .busy=${this.waiting}
        @record-form-done=${(/** @type {CustomEvent<Values>} */ { detail }) => this.#enter(enter, detail)}></record-form>
      <p role="alert">${this.trouble}</p>
    </section>`;
  }

  /** @param {(values: Values) => Promise<void>} enter @param {Values} values */
  async #enter(enter, values) {
    this.waiting = true;
    this.trouble = "";
    try {
      await enter(values);
      location.hash = this.desk?.tank ? "#/feed" : "#/tanks";
    } catch (fault) {
      this.trouble = fault instanceof SaidNo
        ? fieldsRefused(fault.problem.errors)
        : t(fault instanceof NoAnswer ? "people.signIn.offline" : "people.signIn.wrong");
    } finally {
      this.waiting = false;
    }
  }
}

/** @returns {Field[]} */
export const newPerson = () => [
  { name: "name", label: t("people.field.name"), needed: true },
  { name: "password", label: t("people.field.password"), kind: "password", needed: true, hint: t("people.passwordHint") },
];
