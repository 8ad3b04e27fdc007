import { html } from "lit";
import { repeat } from "lit-html/directives/repeat.js";
import { deleteAt, getJson, postJson, putJson } from "../sync/http.js";
import { moment, t } from "../text/index.js";
import { Asking } from "./asking.js";
/** @import { Household, HouseholdPeople as People, Member } from "../types.js" */

/** The people of one household: everyone sees who they are, a steward changes it, and anyone may leave. */
export class HouseholdPeople extends Asking {
  static properties = { household: { attribute: false }, people: { state: true }, link: { state: true }, leaving: { state: true } };

  constructor() {
    super();
    /** @type {Household | null} */
    this.household = null;
    /** @type {People | null} */
    this.people = null;
    /** A link that was just made, and for whom. @type {{ name: string, address: string } | null} */
    this.link = null;
    this.leaving = false;
  }

  connectedCallback() {
    super.connectedCallback();
    this.tried(() => this.#load());
  }

  render() {
    const { household, people } = this;
    if (!household) return "";
    const steward = household.role === "steward";
    return html`<section class="card stack">
      <h2>${household.name}</h2>
      <p role="status">${this.told || (people ? "" : t("people.loading"))}</p>
      ${this.link ? html`<p>${t("people.reset.link", { name: this.link.name })}</p><p><output class="link">${this.link.address}</output></p>` : ""}
      ${people ? html`
        <ul>${repeat(people.people, ({ id }) => id, (member) => html`<li>
          <member-card .member=${member} .mine=${member.id === this.desk?.keeper?.id} .mayChange=${steward} .busy=${this.waiting}
            @member-card-role=${(/** @type {CustomEvent<string>} */ { detail }) => this.#changeRole(member, detail)}
            @member-card-end=${() => this.#end(member)} @member-card-reset=${() => this.#reset(member)}
            @member-card-hand-over=${() => this.#handOver(member)}></member-card></li>`)}</ul>
        ${this.#invitations(people)} ${this.#former(people)} ${this.#changes(people)}` : ""}
      ${steward ? html`<p><a class="firm" href="#/tanks">${t("people.invite.add")}</a></p>` : ""}
      <p><button type="button" class="firm" ?disabled=${this.waiting} @click=${() => this.#leave()}>
        ${this.leaving ? t("people.leave.sure", { household: household.name }) : t("people.leave")}</button></p>
    </section>`;
  }

  /** @param {People} people */
  #invitations({ invitations = [] }) {
    return invitations.length === 0 ? "" : html`<h3>${t("people.invitations")}</h3>
      <ul>${invitations.map(({ id, role, expiresAt }) => html`<li class="row apart">
        <span>${t("people.invitation", { role: t(`people.named.${role}`), at: moment(expiresAt) })}</span>
        <button type="button" class="firm" ?disabled=${this.waiting} @click=${() => this.#withdraw(id)}>${t("people.invitation.back")}</button></li>`)}</ul>`;
  }

  /** @param {People} people */
  #former({ former }) {
    return former.length === 0 ? "" : html`<details><summary>${t("people.former")}</summary>
      <ul>${former.map(({ name, endedAt }) => html`<li>${t("people.former.since", { name, at: moment(endedAt) })}</li>`)}</ul></details>`;
  }

  /** @param {People} people */
  #changes({ changes, people, former }) {
    const names = new Map([...people, ...former].map(({ id, name }) => [id, name]));
    const named = (/** @type {string | undefined} */ id) => names.get(id ?? "") ?? t("people.someone");
    return changes.length === 0 ? "" : html`<details><summary>${t("people.changes")}</summary>
      <p><small>${t("people.changes.lately", { count: changes.length })}</small></p>
      <ul>${changes.map(({ at, by, about, what, role }) => html`<li>
        ${t(`people.change.${what}`, { about: named(about), role: role ? t(`people.named.${role}`) : "" })}
        <small>${t("people.change.by", { at: moment(at), by: named(by) })}</small></li>`)}</ul></details>`;
  }

  get #path() {
    return `/api/v1/households/${encodeURIComponent(this.household?.id ?? "")}`;
  }

  async #load() {
    this.people = await getJson(`${this.#path}/people`);
  }

  /** Does something to someone, then looks anew. @param {Member} member @param {() => Promise<string>} deed */
  #deed(member, deed) {
    this.link = null;
    return this.tried(async () => {
      const said = await deed();
      await this.#load();
      return said;
    }, { name: member.name });
  }

  /** @param {Member} member */
  #at({ id }) {
    return `${this.#path}/people/${encodeURIComponent(id)}`;
  }

  /** @param {Member} member @param {string} role */
  #changeRole(member, role) {
    return this.#deed(member, async () => {
      await putJson(this.#at(member), { role });
      if (member.id === this.desk?.keeper?.id) await this.desk?.door.askAgain();
      return t("people.may.done", { name: member.name, role: t(`people.named.${role}`) });
    });
  }

  /** @param {Member} member */
  #end(member) {
    return this.#deed(member, async () => {
      await deleteAt(this.#at(member));
      return t("people.ended", { name: member.name });
    });
  }

  /** @param {Member} member */
  #reset(member) {
    return this.#deed(member, async () => {
      const { code } = await postJson(`${this.#at(member)}/reset`, {});
      this.link = { name: member.name, address: `${location.origin}/#/reset/${code}` };
      return "";
    });
  }

  /** @param {Member} member */
  #handOver(member) {
    return this.#deed(member, async () => {
      await postJson(`${this.#path}/hand-over`, { person: member.id });
      await this.desk?.door.askAgain();
      return t("people.handOver.done", { name: member.name });
    });
  }

  /** @param {string} id */
  #withdraw(id) {
    return this.tried(async () => {
      await deleteAt(`${this.#path}/invitations/${encodeURIComponent(id)}`);
      await this.#load();
      return t("people.invitation.gone");
    });
  }

  #leave() {
    if (!this.leaving) return (this.leaving = true);
    this.leaving = false;
    return this.tried(async () => {
      await deleteAt(`${this.#path}/people/${encodeURIComponent(this.desk?.keeper?.id ?? "")}`);
      await this.desk?.door.askAgain();
    });
  }
}
