import { html } from "lit";
import { repeat } from "lit-html/directives/repeat.js";
import { deleteAt, getJson, postJson } from "../sync/http.js";
import { moment, t } from "../text/index.js";
import { Asking } from "./asking.js";
/** @import { Field, Values } from "../setup/record-form.js" */
/** @import { OwnPhone } from "../types.js" */

/** Where one is signed in, with a way to sign a lost phone out, and one's own password. */
export class OwnPhones extends Asking {
  static properties = { phones: { state: true } };

  constructor() {
    super();
    /** @type {OwnPhone[]} */
    this.phones = [];
  }

  connectedCallback() {
    super.connectedCallback();
    this.tried(() => this.#load());
  }

  render() {
    const fields = /** @type {Field[]} */ ([
      { name: "old", label: t("people.password.old"), kind: "password", needed: true, autocomplete: "current-password" },
      { name: "password", label: t("people.password.new"), kind: "password", needed: true, hint: t("people.passwordHint") },
    ]);
    return html`<section class="card stack">
      <h2>${t("people.phones")}</h2>
      <p>${t("people.phones.means")}</p>
      <p role="status">${this.told}</p>
      <ul>${repeat(this.phones, ({ id }) => id, (phone) => this.#phone(phone))}</ul>
      ${this.phones.length > 1 ? html`<p><button type="button" class="firm" ?disabled=${this.waiting} @click=${() => this.#endOthers()}>
        ${t("people.phone.others")}</button></p>` : ""}
      <details><summary>${t("people.password")}</summary>
        <record-form .busy=${this.waiting} .fields=${fields}
          @record-form-done=${(/** @type {CustomEvent<Values>} */ { detail }) => this.#change(detail)}></record-form></details>
    </section>`;
  }

  /** @param {OwnPhone} phone */
  #phone(phone) {
    const name = phone.name || t("people.phone.unnamed");
    return html`<li><p class="row"><strong>${phone.asking ? t("people.phone.here", { name }) : name}</strong>
        ${phone.asking ? "" : html`<button type="button" class="firm" ?disabled=${this.waiting}
          @click=${() => this.#end(phone, name)}>${t("people.phone.end")}</button>`}</p>
      <small>${t("people.phone.used", { opened: moment(phone.openedAt), used: moment(phone.lastUsedAt ?? phone.openedAt) })}</small></li>`;
  }

  async #load() {
    const { devices } = await getJson("/api/v1/session/devices");
    this.phones = devices;
  }

  /** @param {OwnPhone} phone @param {string} name */
  #end({ id }, name) {
    return this.tried(async () => {
      await deleteAt(`/api/v1/session/devices/${encodeURIComponent(id)}`);
      await this.#load();
      return t("people.phone.ended", { name });
    });
  }

  #endOthers() {
    return this.tried(async () => {
      await deleteAt("/api/v1/session/devices");
      await this.#load();
      return t("people.phone.othersEnded");
    });
  }

  /** @param {Values} values */
  #change(values) {
    return this.tried(async () => {
      await postJson("/api/v1/session/password", values);
      await this.#load();
      return t("people.password.done");
    });
  }
}
