import { html } from "lit";
import { getJson, putJson } from "../sync/http.js";
import { t } from "../text/index.js";
import { language } from "../text/language.js";
import { Asking } from "./asking.js";
/** @import { Field, Values } from "../setup/record-form.js" */

/** The address that a forgotten password may be helped through, where the server sends letters. Needs the network. */
export class OwnMailbox extends Asking {
  static properties = { ...Asking.properties, mailbox: { state: true } };

  constructor() {
    super();
    /** @type {{ sends: boolean, address: string | null }} */
    this.mailbox = { sends: false, address: null };
  }

  connectedCallback() {
    super.connectedCallback();
    this.tried(() => this.#load());
  }

  render() {
    const { sends, address } = this.mailbox;
    if (!sends) return "";
    return html`<section class="card stack">
      <h2>${t("mailbox.heading")}</h2>
      <p>${t("mailbox.means")}</p>
      <p><strong>${address ?? t("mailbox.none")}</strong></p>
      <p role="status">${this.told}</p>
      <details><summary>${t(address ? "mailbox.change" : "mailbox.give")}</summary>
        <record-form .busy=${this.waiting} .deed=${t("mailbox.go")} .fields=${/** @type {Field[]} */ ([
          { name: "address", label: t("people.field.address"), autocomplete: "email", hint: t(address ? "mailbox.hintEmpty" : "mailbox.hint") },
          { name: "password", label: t("passkey.password"), kind: "password", needed: true, autocomplete: "current-password" },
        ])} @record-form-done=${(/** @type {CustomEvent<Values>} */ { detail }) => this.#give(detail)}></record-form></details>
    </section>`;
  }

  async #load() {
    this.mailbox = await getJson("/api/v1/mailbox");
  }

  /** @param {Values} values */
  #give({ address = "", password }) {
    return this.tried(async () => {
      await putJson("/api/v1/mailbox", { address, password, language: language() });
      await this.#load();
      return address ? t("mailbox.sent", { address }) : t("mailbox.taken");
    });
  }
}
