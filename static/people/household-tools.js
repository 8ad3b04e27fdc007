import { html } from "lit";
import { SaidNo } from "../sync/http.js";
import { t } from "../text/index.js";
import { Element } from "../ui/element.js";
import { fieldsRefused } from "./asking.js";
/** @import { Field, Values } from "../setup/record-form.js" */
/** @import { Household } from "../types.js" */

const roles = ["keeper", "guest", "steward"];

/** What a steward does for a household: one more tank, one more person. Needs the network. */
export class HouseholdTools extends Element {
  static properties = { household: { attribute: false }, link: { state: true }, trouble: { state: true }, waiting: { state: true } };

  constructor() {
    super();
    /** @type {Household | null} */
    this.household = null;
    this.link = "";
    this.trouble = "";
    this.waiting = false;
  }

  render() {
    const { household } = this;
    if (!household) return "";
    const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
    return html`<h2>${household.name}</h2>
      <details><summary>${t("people.tank.add")}</summary>
        <record-form .busy=${this.waiting} .deed=${t("people.tank.go")} .fields=${/** @type {Field[]} */ ([
          { name: "name", label: t("setup.tank.name"), needed: true },
          { name: "zone", label: t("people.tank.zone"), needed: true, value: zone, hint: t("people.tank.zoneHint") },
        ])} @record-form-done=${(/** @type {CustomEvent<Values>} */ { detail }) => this.#tried(async () => {
          await this.desk?.door.addTank(household.id, detail);
          location.hash = "#/setup";
        })}></record-form></details>
      <details><summary>${t("people.invite.add")}</summary>
        <record-form .busy=${this.waiting} .deed=${t("people.invite.go")} .fields=${/** @type {Field[]} */ ([
          { name: "role", label: t("people.invite.role"), kind: "choice", value: "keeper",
            options: roles.map((value) => ({ value, label: t(`people.role.${value}`) })) },
        ])} @record-form-done=${(/** @type {CustomEvent<Values>} */ { detail }) => this.#tried(async () => {
          const { code } = await this.desk?.membership.invite(household.id, String(detail.role)) ?? {};
          this.link = `${location.origin}/#/join/${code}`;
        })}></record-form>
        ${this.link ? html`<p>${t("people.invite.link")}</p><p><output class="link">${this.link}</output></p>
          <p>${t("people.invite.qr")}</p><qr-code .text=${this.link}></qr-code>
          <p><button type="button" class="firm" @click=${() => this.#share()}>${t("people.invite.share")}</button></p>` : ""}</details>
      <p role="alert">${this.trouble}</p>`;
  }

  async #share() {
    if (navigator.share) return navigator.share({ url: this.link }).catch(() => undefined);
    await navigator.clipboard.writeText(this.link);
    this.trouble = t("people.invite.copied");
  }

  /** @param {() => Promise<void>} deed */
  async #tried(deed) {
    this.waiting = true;
    this.trouble = "";
    try {
      await deed();
    } catch (fault) {
      this.trouble = fault instanceof SaidNo
        ? fieldsRefused(fault.problem.errors, { name: "tank" }) : t("people.needsNetwork");
    } finally {
      this.waiting = false;
    }
  }
}
