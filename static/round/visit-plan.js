import { html } from "lit";
import { Element } from "../ui/element.js";
import { icon } from "../ui/icons.js";
import { label } from "../ui/names.js";
import { grams, t } from "../text/index.js";
import { added } from "./standing.js";
/** @import { Finding, Standing } from "../types.js" */

/** Where to go today, why, and what to bring: for all, and for each tank. */
export class VisitPlan extends Element {
  static properties = { standings: { attribute: false }, foodName: { attribute: false } };

  constructor() {
    super();
    /** @type {Standing[]} */
    this.standings = [];
    this.foodName = (/** @type {string} */ key) => key;
  }

  render() {
    const { standings } = this;
    if (standings.length === 0) return html`<section class="card stack"><h2>${t("round.plan")}</h2><p>${t("round.plan.none")}</p></section>`;
    const bring = added(...standings.map((standing) => standing.bring));
    return html`<section class="card stack">
      <h2>${t("round.plan")}</h2>
      <h3>${t("round.bring")}</h3>
      ${bring.length === 0 ? html`<p>${t("round.bring.nothing")}</p>` : html`<ul>${bring.map(({ food, grams: mass }) => html`<li>
        <strong>${grams(mass)}</strong> ${this.foodName(food)} <small>${t("round.bring.for", {
          tanks: standings.filter((one) => one.bring.some((item) => item.food === food)).map(({ name }) => name) })}</small></li>`)}</ul>`}
      <ol>${standings.map((standing) => this.#visit(standing))}</ol>
      <p><button type="button" class="firm" @click=${() => print()}>${t("round.print")}</button></p>
    </section>`;
  }

  /** @param {Standing} standing */
  #visit(standing) {
    const { name, reasons, weights, findings, bring } = standing;
    return html`<li><h3>${name}</h3>
      ${reasons.length ? html`<p>${reasons.map((reason) => t(`round.reason.${reason}`, { count: weights.high })).join("; ")}</p>` : ""}
      <ul>${findings.filter(({ severity }) => severity !== "low").map((finding) => html`<li>${icon(finding.severity)} ${titleOf(finding, standing)}</li>`)}
        ${bring.map(({ food, grams: mass }) => html`<li><strong>${grams(mass)}</strong> ${this.foodName(food)}</li>`)}</ul></li>`;
  }
}

/** @param {Finding} finding @param {Standing} standing */
function titleOf({ rule, facts, days, component, about = "" }, standing) {
  return t(`finding.${rule}.title`, { ...facts, days, count: days, about: standing.about.get(about) ?? about,
    component: component ? label("component", component) : "" });
}
