import { html } from "lit";
import { Element } from "../ui/element.js";
import { icon } from "../ui/icons.js";
import { dayName, percent, plain, t } from "../text/index.js";
/** @import { Standing } from "../types.js" */

const weights = /** @type {const} */ (["high", "medium", "low"]);
const firstRefills = 3;

/**
 * One tank of the round.
 * @fires round-row-visit - whether it is to be visited today
 * @fires round-row-open
 */
export class RoundRow extends Element {
  static properties = { standing: { attribute: false }, household: {}, visited: { type: Boolean }, partly: { type: Boolean } };

  constructor() {
    super();
    /** @type {Standing | null} */
    this.standing = null;
    this.household = "";
    this.visited = false;
    this.partly = false;
  }

  render() {
    const { standing } = this;
    if (!standing) return "";
    const { name, weights: counted, daysSinceFed, refills, quiet, conflicts, unsent, day } = standing;
    const all = counted.high + counted.medium + counted.low;
    return html`<article>
      <header class="row apart"><h2>${name}${this.household ? html` <small>${this.household}</small>` : ""}</h2>
        <label class="row tick"><input type="checkbox" .checked=${this.visited}
          @change=${(/** @type {Event} */ { target }) => this.say("round-row-visit", /** @type {HTMLInputElement} */ (target).checked)}>
          ${t("round.visit")}</label></header>
      ${this.partly ? html`<p class="caution">${t("round.partly")}</p>` : ""}
      <dl class="facts">
        <div><dt>${t("round.ration")}</dt>
          <dd>${standing.week === null ? t("round.ration.none") : `≈ ${percent(standing.week)}`}</dd>
          <dd><small>${t("round.ration.week")}${standing.today === null ? "" : `; ${t("round.ration.today", { part: percent(standing.today) })}`}</small></dd></div>
        <div><dt>${all ? t("round.findings", { count: all }) : t("round.findings.none")}</dt>
          <dd class="weights">${weights.map((weight) => (counted[weight] ? html`<span class="tag">${icon(weight)} ${plain(counted[weight])}
            <span>${t(`severity.${weight}`)}</span></span>` : ""))}</dd></div>
        <div><dt>${t("nav.feed")}</dt>
          <dd>${daysSinceFed === null ? t("round.fed.never") : daysSinceFed === 0 ? t("round.fed.0") : t("round.fed.ago", { count: daysSinceFed })}</dd></div>
      </dl>
      <ul>
        ${refills.length ? refills.slice(0, firstRefills).map((refill) => html`<li>${t("round.refill", { feeder: refill.feeder, day: dayName(refill.day, day) })}</li>`) : ""}
        ${conflicts ? html`<li class="flag">${icon("needsYou")} ${t("round.conflicts", { count: conflicts })}</li>` : ""}
        ${unsent ? html`<li>${icon("onPhone")} ${t("round.unsent", { count: unsent })}</li>` : ""}
        ${quiet.length ? html`<li>${t("round.quiet", { count: quiet[quiet.length - 1].days, names: quiet.map((one) => one.name) })}</li>` : ""}
      </ul>
      <p><button type="button" class="firm" @click=${() => this.say("round-row-open")}>${t("round.open", { tank: name })}</button></p>
    </article>`;
  }
}
