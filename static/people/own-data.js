import { html } from "lit";
import { postJson } from "../sync/http.js";
import { t } from "../text/index.js";
import { Asking } from "./asking.js";
/** @import { Field, Values } from "../setup/record-form.js" */

/** What is kept about oneself: to take along, and to take out for good. Needs the network. */
export class OwnData extends Asking {
  render() {
    const { desk } = this;
    if (!desk) return "";
    return html`<section class="card stack">
      <h2>${t("person.heading")}</h2>
      <p>${t("person.means")}</p>
      <p><a class="firm" href="/api/v1/person/export.json" download>${t("person.export")}</a></p>
      <p role="status">${this.told}</p>
      <details><summary>${t("person.erase")}</summary><div class="stack">
        <p>${t("person.erase.means")}</p>
        ${desk.status.unsent ? html`<p><strong>${t("person.erase.unsent")}</strong></p>` : ""}
        <record-form .busy=${this.waiting} .deed=${t("person.erase.go")} .fields=${/** @type {Field[]} */ ([
          { name: "password", label: t("passkey.password"), kind: "password", needed: true, autocomplete: "current-password" },
        ])} @record-form-done=${(/** @type {CustomEvent<Values>} */ { detail }) => this.#erase(detail)}></record-form></div></details>
    </section>`;
  }

  /** @param {Values} values */
  #erase(values) {
    return this.tried(async () => {
      await postJson("/api/v1/person/erasure", values);
      await this.desk?.door.signOut();
    });
  }
}
