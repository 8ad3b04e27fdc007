import { html } from "lit";
import { Element } from "../ui/element.js";
import { icon } from "../ui/icons.js";
import { clock, t } from "../text/index.js";
/** @import { Feeding } from "../types.js" */

/**
 * Two people, one tank, ten minutes: perhaps they wrote down the same feeding. Nobody decides that but a person.
 * @fires same-feeding-answer - "both", "mine" or "theirs": whose is taken back, or none
 */
export class SameFeeding extends Element {
  static properties = { mine: { attribute: false }, theirs: { attribute: false }, names: { attribute: false } };

  constructor() {
    super();
    /** @type {Feeding | null} null while mine is not yet recorded */
    this.mine = null;
    /** @type {Feeding | null} */
    this.theirs = null;
    /** @type {any} */
    this.names = null;
  }

  render() {
    const { mine, theirs, names } = this;
    if (!theirs || !names) return "";
    const by = names.keeper(theirs.by);
    const what = theirs.items.map(({ food }) => names.food(food));
    return html`<section class="same" role="alertdialog" aria-labelledby="same-heading">
      <h2 id="same-heading">${icon("needsYou")} ${t("same.heading")}</h2>
      <p>${t(mine ? "same.both" : "same.already", { by, at: clock(theirs.minute), foods: what, mine: mine ? clock(mine.minute) : "" })}</p>
      <p class="row">
        <button type="button" class="firm" @click=${() => this.say("same-feeding-answer", "both")}>${t(mine ? "same.keepBoth" : "same.another")}</button>
        <button type="button" class="firm" @click=${() => this.say("same-feeding-answer", "mine")}>${t(mine ? "same.takeMine" : "same.isSame")}</button>
        ${mine ? html`<button type="button" class="firm" @click=${() => this.say("same-feeding-answer", "theirs")}>${t("same.takeTheirs", { by })}</button>` : ""}
      </p>
    </section>`;
  }
}

const NEAR_MINUTES = 10;
const kept = "provender.answered";
const mostKept = 50;

/**
 * Another person's feeding within ten minutes of a moment.
 * @param {Feeding[]} feedings newest first @param {string} me @param {number} day @param {number} minute
 */
export const nearBy = (feedings, me, day, minute) =>
  feedings.find((one) => one.source === "hand" && one.by !== me && Math.abs((day - one.day) * 1440 + minute - one.minute) <= NEAR_MINUTES);

/**
 * Mine and another's that lie so near, and about which this phone was not asked yet.
 * @param {Feeding[]} feedings newest first @param {string} me
 */
export function unansweredPair(feedings, me) {
  const others = feedings.filter((one) => one.source === "hand" && one.by !== me);
  if (!others.length) return null;
  const known = answered();
  for (const mine of feedings) {
    const theirs = mine.by === me && mine.source === "hand" ? nearBy(others, me, mine.day, mine.minute) : undefined;
    if (theirs && !known.includes(pairOf(mine, theirs))) return { mine, theirs };
  }
  return null;
}

/** Asked once and not again. @param {Feeding} mine @param {Feeding} theirs */
export function remember(mine, theirs) {
  localStorage.setItem(kept, JSON.stringify([...answered(), pairOf(mine, theirs)].slice(-mostKept)));
}

/** @returns {string[]} */
function answered() {
  try {
    return JSON.parse(localStorage.getItem(kept) ?? "[]");
  } catch {
    return [];
  }
}

/** @param {Feeding} mine @param {Feeding} theirs */
const pairOf = (mine, theirs) => `${mine.id} ${theirs.id}`;
