import { html } from "lit";
import { repeat } from "lit-html/directives/repeat.js";
import { Element } from "../ui/element.js";
import { inTurn } from "../ui/turns.js";
import { clock, dayName, t } from "../text/index.js";
/** @import { Feeding, Shot, Today } from "../types.js" */

/** @type {Shot[]} */
const none = [];

/**
 * What the tank was given, newest first: today open, the days before folded away, and what was undone.
 * @fires feeding-list-restore - the id of a feeding to bring back
 */
export class FeedingList extends Element {
  static properties = {
    feedings: { attribute: false },
    withdrawn: { attribute: false },
    names: { attribute: false },
    shots: { attribute: false },
    day: { type: Number },
    minute: { type: Number },
    mayChange: { type: Boolean },
  };

  /** Whether the days before were looked at: until then they need not be drawn. */
  #unfolded = false;

  constructor() {
    super();
    /** @type {Feeding[]} */
    this.feedings = [];
    /** @type {Today["withdrawn"]} */
    this.withdrawn = [];
    /** @type {any} */
    this.names = null;
    /** @type {Map<string, Shot[]>} photos by feeding */
    this.shots = new Map();
    this.day = 0;
    this.minute = 0;
    this.mayChange = false;
  }

  render() {
    const today = this.feedings.filter(({ day }) => day === this.day);
    const before = this.feedings.filter(({ day }) => day < this.day);
    const undone = this.withdrawn.filter(({ day }) => day === this.day);
    return html`
      <h2>${t("list.today")}</h2>
      ${today.length ? this.#rows(today) : html`<p>${t("list.none")}</p>`}
      ${inTurn(() => [undone.map((one) => this.#undone(one)), before.length ? this.#before(before) : ""])}`;
  }

  /** @param {Today["withdrawn"][number]} one */
  #undone({ id, minute }) {
    return html`<p class="undone"><span>${t("list.undone", { at: clock(minute) })}</span>
      ${this.mayChange ? html`<button type="button" class="quiet" @click=${() => this.say("feeding-list-restore", id)}>${t("list.restore")}</button>` : ""}
      <a class="quiet" href=${`#/history/${id}`} aria-label=${t("row.historyOf", { at: clock(minute) })}>${t("row.history")}</a></p>`;
  }

  /** @param {Feeding[]} before */
  #before(before) {
    return html`<details @toggle=${this.#unfold}><summary>${t("list.before")}</summary>
      ${!this.#unfolded ? "" : [...new Set(before.map(({ day }) => day))].map((day) => html`
        <h3>${dayName(day, this.day)}</h3>
        ${this.#rows(before.filter((feeding) => feeding.day === day))}`)}
    </details>`;
  }

  #unfold() {
    this.#unfolded = true;
    this.requestUpdate();
  }

  /** @param {Feeding[]} feedings */
  #rows(feedings) {
    return html`<ul>${repeat(feedings, ({ id }) => id, (feeding) => inTurn(() => html`<li>
      <feeding-row .feeding=${feeding} .names=${this.names} .shots=${this.shots.get(feeding.id) ?? none} .by=${this.names.keeper(feeding.by)}
        .mayChange=${this.mayChange} .latest=${feeding.day === this.day ? this.minute : 1439}></feeding-row></li>`))}</ul>`;
  }
}
