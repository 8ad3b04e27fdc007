import { html } from "lit";
import { backLink } from "../ui/back-link.js";
import { repeat } from "lit-html/directives/repeat.js";
import { foodName } from "../ui/names.js";
import { Element } from "../ui/element.js";
import { t } from "../text/index.js";
import { inOrder, orderNames, standingOf } from "./standing.js";
/** @import { Desk, Standing, TankRow } from "../types.js" */

/** All tanks of a person, over all their households: how each stands, and a plan for today's visits. Works without a network. */
export class RoundPage extends Element {
  static properties = { order: { state: true }, onlyDue: { state: true }, done: { state: true }, troubled: { state: true } };

  /** @type {Map<string, Standing>} */
  #standings = new Map();
  /** @type {Map<string, boolean>} ticked or not by hand; else whether the tank asks for a visit */
  #visits = new Map();
  /** @type {Set<string>} tanks of which a part is still on its way */
  #partly = new Set();
  /** @type {Set<string>} */
  #waiting = new Set();
  #reading = false;
  #came = (/** @type {Event} */ event) => this.#reckon([/** @type {CustomEvent<string>} */ (event).detail]);

  constructor() {
    super();
    this.order = "weight";
    this.onlyDue = false;
    this.done = 0;
    /** @type {string[]} */
    this.troubled = [];
  }

  connectedCallback() {
    super.connectedCallback();
    const { desk } = this;
    if (!desk) return;
    desk.addEventListener("came", this.#came);
    const ids = desk.tanks.map(({ id }) => id);
    desk.otherTanks.follow(ids);
    this.#reckon(ids);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    this.desk?.removeEventListener("came", this.#came);
    this.desk?.otherTanks.lookAway();
  }

  render() {
    const { desk } = this;
    if (!desk) return "";
    const shown = inOrder([...this.#standings.values()], this.order, this.onlyDue);
    const visited = shown.filter((standing) => this.#isVisited(standing));
    const named = (/** @type {string} */ food) => this.#food(desk, food);
    return html`
      <page-head .heading=${t("round.heading")} .status=${desk.status}></page-head>
      ${backLink("#/tanks", t("tank.list.heading"))}
      <p><small>${t("round.intro")}</small></p>
      <p role="status">${this.done < desk.tanks.length ? t("round.reading", { done: this.done, all: desk.tanks.length }) : ""}</p>
      <div class="row choose">
        ${this.#choice("order", t("round.sort"), orderNames.map((name) => [name, t(`round.sort.${name}`)]), this.order, (value) => (this.order = value))}
        ${this.#choice("show", t("round.filter"), ["all", "due"].map((name) => [name, t(`round.filter.${name}`)]), this.onlyDue ? "due" : "all",
    (value) => (this.onlyDue = value === "due"))}
      </div>
      <div class="columns">
        <section class="stack" aria-label=${t("tank.list.heading")}>
          ${shown.length === 0 && this.done >= desk.tanks.length ? html`<p class="empty">${t("round.noneDue")}</p>` : ""}
          ${repeat(shown, ({ id }) => id, (standing) => html`<round-row .standing=${standing} .foodName=${named} .visited=${this.#isVisited(standing)}
            .partly=${this.#partly.has(standing.id)} .household=${this.#household(desk, standing)}
            @round-row-visit=${(/** @type {CustomEvent<boolean>} */ { detail }) => this.#visit(standing.id, detail)}
            @round-row-open=${() => this.#open(desk, standing.id)}></round-row>`)}
          ${this.troubled.map((name) => html`<p class="caution">${name}: ${t("round.trouble")}</p>`)}
        </section>
        <visit-plan .standings=${visited} .foodName=${named}></visit-plan>
      </div>`;
  }

  /** @param {string} id @param {string} label @param {string[][]} options @param {string} value @param {(value: string) => void} choose */
  #choice(id, label, options, value, choose) {
    return html`<label for=${`round-${id}`}>${label}
      <select id=${`round-${id}`} @change=${(/** @type {Event} */ { target }) => choose(/** @type {HTMLSelectElement} */ (target).value)}>
        ${options.map(([key, words]) => html`<option value=${key} ?selected=${key === value}>${words}</option>`)}</select></label>`;
  }

  /** Whose tank it is, where that is not plain. @param {Desk} desk @param {Standing} standing */
  #household(desk, { household }) {
    return desk.households.length > 1 ? desk.households.find(({ id }) => id === household)?.name ?? "" : "";
  }

  /** A food of any tank of the round: its own ones are known only there. @param {Desk} desk @param {string} food */
  #food(desk, food) {
    for (const { foods } of this.#standings.values()) if (foods.has(food)) return /** @type {string} */ (foods.get(food));
    return foodName(desk, food);
  }

  /** @param {Standing} standing */
  #isVisited({ id, reasons }) {
    return this.#visits.get(id) ?? reasons.length > 0;
  }

  /** @param {string} id @param {boolean} wanted */
  #visit(id, wanted) {
    this.#visits.set(id, wanted);
    this.requestUpdate();
  }

  /** One after another, so that the page stays alive under the thumb. @param {string[]} ids */
  async #reckon(ids) {
    for (const id of ids) this.#waiting.add(id);
    if (this.#reading) return;
    this.#reading = true;
    for (const id of this.#waiting) {
      this.#waiting.delete(id);
      const { desk } = this;
      const row = desk?.tanks.find((tank) => tank.id === id);
      if (desk && row && this.isConnected) await this.#reckonOne(desk, row);
      this.done = this.#standings.size + this.troubled.length;
      await new Promise((resolve) => setTimeout(resolve));
    }
    this.#reading = false;
  }

  /** @param {Desk} desk @param {TankRow} row */
  async #reckonOne(desk, row) {
    const { today, unsent, whole } = await desk.otherTanks.lookAt(row);
    this.troubled = this.troubled.filter((name) => name !== row.name);
    if (today) this.#standings.set(row.id, standingOf(row, today, unsent, Date.now()));
    else this.troubled = [...this.troubled, row.name];
    if (whole) this.#partly.delete(row.id);
    else this.#partly.add(row.id);
    this.requestUpdate();
  }

  /** @param {Desk} desk @param {string} id */
  async #open(desk, id) {
    await desk.open(id);
    location.hash = "#/today";
  }
}
