import { html } from "lit";
import { repeat } from "lit-html/directives/repeat.js";
import { deleteAt, getJson, putJson } from "../sync/http.js";
import { moment, t } from "../text/index.js";
import { Asking } from "./asking.js";
import { makePasskey, PutAway, whyNoPasskeys } from "./passkey.js";
/** @import { Field, Values } from "../setup/record-form.js" */
/** @import { OwnPasskey } from "../types.js" */

/** One's own passkeys: made on this phone, named, removed; or why there can be none here. Needs the network. */
export class OwnPasskeys extends Asking {
  static properties = { passkeys: { state: true } };

  constructor() {
    super();
    /** @type {OwnPasskey[]} */
    this.passkeys = [];
  }

  connectedCallback() {
    super.connectedCallback();
    this.tried(() => this.#load());
  }

  render() {
    const reason = whyNoPasskeys();
    return html`<section class="card stack">
      <h2>${t("passkey.heading")}</h2>
      <p>${t("passkey.means")}</p>
      <p role="status">${this.told}</p>
      <ul>${repeat(this.passkeys, ({ id }) => id, (passkey) => this.#passkey(passkey))}</ul>
      ${reason ? html`<p>${t(`passkey.none.${reason}`)}</p>` : html`<details><summary>${t("passkey.add")}</summary>
        <record-form .busy=${this.waiting} .deed=${t("passkey.add.go")} .fields=${/** @type {Field[]} */ ([
          { name: "name", label: t("passkey.name"), needed: true, value: t("passkey.name.usual") },
          { name: "password", label: t("passkey.password"), kind: "password", needed: true, autocomplete: "current-password" },
        ])} @record-form-done=${(/** @type {CustomEvent<Values>} */ { detail }) => this.#add(detail)}></record-form></details>`}
    </section>`;
  }

  /** @param {OwnPasskey} passkey */
  #passkey({ id, name, place, madeAt, usedAt }) {
    return html`<li><p class="row"><strong>${name}</strong></p>
      <small>${t(usedAt ? "passkey.used" : "passkey.unused", { made: moment(madeAt), used: usedAt ? moment(usedAt) : "", place })}</small>
      <details><summary>${t("passkey.change", { name })}</summary><div class="stack">
        <record-form .busy=${this.waiting} .deed=${t("passkey.rename")} .fields=${/** @type {Field[]} */ ([
          { name: "name", label: t("passkey.name"), needed: true, value: name },
        ])} @record-form-done=${(/** @type {CustomEvent<Values>} */ { detail }) => this.#rename(id, String(detail.name))}></record-form>
        <p><button type="button" class="firm" ?disabled=${this.waiting} @click=${() => this.#remove(id, name)}>
          ${t("passkey.remove")}</button></p></div></details></li>`;
  }

  async #load() {
    const { passkeys } = await getJson("/api/v1/passkeys");
    this.passkeys = passkeys;
  }

  /** @param {Values} values */
  #add({ name, password }) {
    return this.tried(async () => {
      try {
        await makePasskey(String(password), String(name).trim());
      } catch (fault) {
        if (fault instanceof PutAway) return t(fault.message === "InvalidStateError" ? "passkey.known" : "passkey.putAway");
        throw fault;
      }
      await this.#load();
      return t("passkey.made", { name });
    });
  }

  /** @param {string} id @param {string} name */
  #rename(id, name) {
    return this.tried(async () => {
      await putJson(`/api/v1/passkeys/${encodeURIComponent(id)}`, { name });
      await this.#load();
      return t("passkey.renamed", { name });
    });
  }

  /** @param {string} id @param {string} name */
  #remove(id, name) {
    return this.tried(async () => {
      await deleteAt(`/api/v1/passkeys/${encodeURIComponent(id)}`);
      await this.#load();
      return t("passkey.removed", { name });
    });
  }
}
