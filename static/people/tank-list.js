/** @import { TankRow } from "../types.js" */
import { html } from "lit";
import { backLink } from "../ui/back-link.js";
import { repeat } from "lit-html/directives/repeat.js";
import { t } from "../text/index.js";
import { ToldPage } from "../ui/told-page.js";

/** The tanks this keeper may open; choosing one makes it the open tank. A steward puts one away here, and brings it back. */
export class TankList extends ToldPage {
  static properties = { trouble: { state: true } };

  /** @type {TankRow[]} */
  #away = [];

  constructor() {
    super();
    this.trouble = false;
  }

  connectedCallback() {
    super.connectedCallback();
    if (this.#isSteward()) this.#lookAway();
  }

  render() {
    const tanks = this.desk?.tanks ?? [];
    const steward = this.#isSteward();
    return html`
      <section class="page stack" aria-labelledby="tanks-heading">
        ${this.desk?.tank ? backLink("#/more", t("nav.more")) : ""}
        <h1 id="tanks-heading">${t("tank.list.heading")}</h1>
        ${tanks.length === 0 ? html`<p>${t(steward ? "tank.list.begin" : "tank.list.none")}</p>` : html`
          ${tanks.length > 1 ? html`<p><a class="firm" href="#/round">${t("round.heading")}</a></p>` : ""}
          <ul class="stack">${repeat(tanks, ({ id }) => id, (tank) => this.#row(tank))}</ul>`}
        ${(this.desk?.households ?? []).filter(({ role }) => role === "steward").map((household) => html`
          <household-tools class="stack" .desk=${this.desk} .household=${household}></household-tools>`)}
        ${this.#away.length ? html`<h2>${t("tank.away.heading")}</h2>
          <ul class="stack">${this.#away.map((tank) => html`<li class="card"><p><strong>${tank.name}</strong></p>
            ${tank.role === "steward" ? html`<button class="firm" @click=${() => this.#putAway(tank, false)}>${t("tank.away.back")}</button>` : ""}</li>`)}</ul>` : ""}
        <p role="alert">${this.trouble ? t("tank.list.trouble") : ""}</p>
      </section>
      <undo-toast @undo-toast-undo=${(/** @type {CustomEvent<TankRow>} */ { detail }) => this.#putAway(detail, false)}></undo-toast>`;
  }

  /** @param {TankRow} tank */
  #row(tank) {
    const open = tank.id === this.desk?.tank?.id;
    return html`
      <li class="card">
        <button class=${open ? "" : "primary"} aria-current=${open ? "true" : "false"} @click=${() => this.#open(tank.id)}>
          ${tank.name}
        </button>
        <p>${t(`tank.role.${tank.role}`)}${open ? ` · ${t("tank.list.open")}` : ""}</p>
        ${tank.invented ? html`<p>${t("tank.invented")}</p>` : ""}
        ${tank.role === "steward" ? this.#awayButton(tank) : ""}
      </li>`;
  }

  /** @param {TankRow} tank */
  #awayButton(tank) {
    const deed = t(tank.invented ? "tank.away.demo" : "tank.away.go");
    return html`<button class="quiet away" aria-label=${t("tank.away.of", { deed, name: tank.name })} @click=${() => this.#putAway(tank, true)}>${deed}</button>`;
  }

  #isSteward() {
    return this.desk?.households.some(({ role }) => role === "steward") ?? false;
  }

  /** What is put away is seen with a network only; without one nothing is missing here. */
  async #lookAway() {
    this.#away = (await this.desk?.membership.tanksAway().catch(() => [])) ?? [];
    this.requestUpdate();
  }

  /** @param {TankRow} tank @param {boolean} away */
  #putAway(tank, away) {
    return this.tried(async () => {
      await this.desk?.door.putAway(tank.id, away);
      this.tell(t(away ? "tank.away.done" : "tank.away.undone", { name: tank.name }), away ? tank : undefined);
      await this.#lookAway();
    });
  }

  /** @param {string} id */
  async #open(id) {
    this.trouble = false;
    try {
      await this.desk?.open(id);
      location.hash = "#/feed";
    } catch {
      this.trouble = true;
    }
  }
}
