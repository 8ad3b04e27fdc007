import { html } from "lit";
import { t } from "../text/index.js";
import { Element } from "../ui/element.js";
/** @import { Values } from "../setup/record-form.js" */
/** @import { Member } from "../types.js" */

const roles = ["keeper", "guest", "steward"];

/**
 * One person of a household; a steward may change what they may do. What cannot be taken back is asked twice.
 * @fires member-card-role - the new role
 * @fires member-card-end
 * @fires member-card-reset
 * @fires member-card-hand-over
 */
export class MemberCard extends Element {
  static properties = { member: { attribute: false }, mine: { type: Boolean }, mayChange: { type: Boolean }, busy: { type: Boolean },
    asked: { state: true } };

  constructor() {
    super();
    /** @type {Member | null} */
    this.member = null;
    this.mine = false;
    this.mayChange = false;
    this.busy = false;
    /** What was pressed once and waits to be meant. */
    this.asked = "";
  }

  render() {
    const { member } = this;
    if (!member) return "";
    const { name, role } = member;
    return html`<p class="row"><strong>${this.mine ? t("people.you", { name }) : name}</strong> <span>${t(`people.named.${role}`)}</span></p>
      ${!this.mayChange ? "" : html`<details><summary>${t("people.may", { name })}</summary><div class="stack">
        <record-form .busy=${this.busy} .deed=${t("people.may.go")} .fields=${[
          { name: "role", label: t("people.may.field"), kind: "choice", value: role,
            options: roles.map((value) => ({ value, label: t(`people.role.${value}`) })) },
        ]} @record-form-done=${(/** @type {CustomEvent<Values>} */ { detail }) => this.say("member-card-role", detail.role)}></record-form>
        ${this.mine ? "" : html`<p class="row">
          <button type="button" class="firm" ?disabled=${this.busy} @click=${() => this.say("member-card-reset")}>${t("people.reset")}</button>
          ${this.#twice("handOver", "member-card-hand-over", name)} ${this.#twice("end", "member-card-end", name)}</p>`}
      </div></details>`}`;
  }

  /** @param {string} key @param {string} event @param {string} name */
  #twice(key, event, name) {
    return html`<button type="button" class="firm" ?disabled=${this.busy} @click=${() => {
      if (this.asked === key) this.say(event);
      this.asked = this.asked === key ? "" : key;
    }}>${this.asked === key ? t(`people.${key}.sure`, { name }) : t(`people.${key}`)}</button>`;
  }
}
