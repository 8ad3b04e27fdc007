import { html } from "lit";
import { Element } from "../ui/element.js";
import { figure } from "../ui/figure.js";
import { icon } from "../ui/icons.js";
import { fishName } from "../ui/names.js";
import { grams, kj, t } from "../text/index.js";
import { gapRing, isOver } from "./component-pictures.js";
/** @import { Fish, Finding } from "../types.js" */

const mostRings = 4;

/**
 * One fish in the roster: what it weighs, what it is due and reckoned to have had, and what it waits for.
 * @fires fish-row-open - the fish's key
 */
export class FishRow extends Element {
  static properties = { fish: { attribute: false }, findings: { attribute: false }, guild: {}, chosen: { type: Boolean } };

  constructor() {
    super();
    /** @type {Fish | null} */
    this.fish = null;
    /** @type {Finding[]} */
    this.findings = [];
    this.guild = "";
    this.chosen = false;
  }

  render() {
    const { fish } = this;
    if (!fish) return "";
    const weightiest = this.findings[0];
    return html`<button type="button" aria-pressed=${this.chosen} @click=${() => this.say("fish-row-open", fish.id)}>
      <span class="name">
        <strong>${fishName(fish)}</strong>
        ${fish.place === "isolation" ? html`<span class="tag">${icon("isolation")} ${t("fish.isolation")}</span>` : ""}
        <small>${this.guild}</small>
      </span>
      <span class="mass">${figure(fish.weightGrams, grams)}${fish.count > 1 ? html` <small>${t("fish.each")}</small>` : ""}</span>
      <span class="got">${this.#share(fish)}</span>
      ${weightiest ? html`<span class="finding ${weightiest.severity}">${icon(weightiest.severity)}
        ${t(`finding.${weightiest.rule}.short`)}</span>` : ""}
      <span class="rings">${tellingOf(fish).map(gapRing)}</span>
    </button>`;
  }

  /** @param {Fish} fish */
  #share({ gotKj, dueKj }) {
    const most = Math.max(dueKj.value, gotKj.value, 0.001);
    const words = t("fish.gotOfDue", { got: Number(gotKj.value.toPrecision(2)), due: kj(dueKj.value) });
    return html`<svg class="sip" role="img" aria-label=${words} width="100%" height="0.75em">
      <line class="bed" x1="0" x2="100%" y1="0.7em" y2="0.7em"/>
      <rect class="hand" x="0" y="0.1em" height="0.6em" width=${`${(95 * gotKj.value) / most}%`}/>
      <line class="mark" x1=${`${(95 * dueKj.value) / most}%`} x2=${`${(95 * dueKj.value) / most}%`} y1="0" y2="0.75em"/>
    </svg><small aria-hidden="true">${words}</small>`;
  }
}

/**
 * The components worth a picture: those overdue first, then those with the shortest patience.
 * @param {Fish} fish
 */
function tellingOf({ components }) {
  return components.filter(({ gapDays, min }) => gapDays > 0 && min > 0)
    .sort((a, b) => Number(isOver(b)) - Number(isOver(a)) || a.gapDays - b.gapDays)
    .slice(0, mostRings);
}
