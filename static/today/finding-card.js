import { html } from "lit";
import { Element } from "../ui/element.js";
import { icon } from "../ui/icons.js";
import { label } from "../ui/names.js";
import { whyButton } from "../ui/figure.js";
import { dayName, grams, has, t } from "../text/index.js";
/** @import { Finding } from "../types.js" */

/**
 * One finding: how much it weighs, which fish, since when, how sure, and what to offer.
 * @fires finding-card-why - the finding
 */
export class FindingCard extends Element {
  static properties = {
    finding: { attribute: false },
    fishNames: { attribute: false },
    foodName: { attribute: false },
    about: {},
    day: { type: Number },
  };

  constructor() {
    super();
    /** @type {Finding | null} */
    this.finding = null;
    /** @type {string[]} */
    this.fishNames = [];
    this.foodName = (/** @type {string} */ key) => key;
    this.day = 0;
    /** the name of the auto-feeder it concerns */
    this.about = "";
  }

  render() {
    const { finding } = this;
    if (!finding) return "";
    const words = { ...wordsOf(finding), about: this.about };
    const title = t(`finding.${finding.rule}.title`, words);
    return html`
      <article class=${finding.severity}>
        <p class="weight">${icon(finding.severity)} ${t(`severity.${finding.severity}`)}</p>
        <h3>${title}</h3>
        ${finding.about ? "" : html`<p class="who">${this.fishNames.length ? html`<a href=${whereTo(finding)}>${t("finding.who", { fish: this.fishNames })}</a>` : has(`finding.${finding.rule}.who`) ? t(`finding.${finding.rule}.who`) : t("finding.display")}</p>`}
        <p>${t(`finding.${finding.rule}.since`, { ...words, day: dayName(finding.sinceDay, this.day) })}</p>
        ${has(`finding.${finding.rule}.reason`) ? html`<p class="reason">${t(`finding.${finding.rule}.reason`, words)}</p>` : ""}
        ${finding.offer.length && has(`finding.${finding.rule}.offer`) ? html`<p>${t(`finding.${finding.rule}.offer`, words)}</p>` : ""}
        ${finding.offer.length ? html`<ul class="offer">${finding.offer.map(({ food, grams: mass }) => html`
          <li><strong>${grams(mass)}</strong> ${this.foodName(food)}</li>`)}</ul>` : ""}
        <footer class="row apart">
          <small>${t(`sure.${finding.sure}`)}</small>
          ${whyButton(() => this.say("finding-card-why", finding), title)}
        </footer>
      </article>`;
  }
}

/** One fish has a page of its own; several stand in the roster, each with what was found. @param {Finding} finding */
const whereTo = ({ fish: [one, ...others] }) => (others.length ? "#/fish" : `#/fish/${encodeURIComponent(one)}`);

/** @param {Finding} finding */
function wordsOf({ facts, days, component }) {
  return { ...facts, days, count: days, component: component ? label("component", component) : "" };
}
