/** @import { TankRow } from "../types.js" */
import { html } from "lit";
import { repeat } from "lit-html/directives/repeat.js";
import { t } from "../text/index.js";
import { Element } from "../ui/element.js";

/** The tanks this keeper may open; choosing one makes it the open tank. */
export class TankList extends Element {
  static properties = { trouble: { state: true } };

  constructor() {
    super();
    this.trouble = false;
  }

  render() {
    const tanks = this.desk?.tanks ?? [];
    const steward = this.desk?.households.some(({ role }) => role === "steward");
    return html`
      <section class="page stack" aria-labelledby="tanks-heading">
        <h1 id="tanks-heading">${t("tank.list.heading")}</h1>
        ${tanks.length === 0 ? html`<p>${t(steward ? "tank.list.begin" : "tank.list.none")}</p>` : html`
          ${tanks.length > 1 ? html`<p><a class="firm" href="#/round">${t("round.heading")}</a></p>` : ""}
          <ul class="stack">${repeat(tanks, ({ id }) => id, (tank) => this.#row(tank))}</ul>`}
        ${(this.desk?.households ?? []).filter(({ role }) => role === "steward").map((household) => html`
          <household-tools class="stack" .desk=${this.desk} .household=${household}></household-tools>`)}
        <p role="alert">${this.trouble ? t("tank.list.trouble") : ""}</p>
      </section>`;
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
      </li>`;
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
