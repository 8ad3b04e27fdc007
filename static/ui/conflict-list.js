import { html } from "lit";
import { Element } from "./element.js";
import { icon } from "./icons.js";
import { t } from "../text/index.js";
/** @import { Conflict } from "../types.js" */

/**
 * Two people changed the same thing without seeing each other: what stands goes on standing until somebody picks one.
 * @fires conflict-list-pick - {conflict, value}
 */
export class ConflictList extends Element {
  static properties = { conflicts: { attribute: false }, nameOf: { attribute: false }, keeperName: { attribute: false }, mayPick: { type: Boolean } };

  constructor() {
    super();
    /** @type {Conflict[]} */
    this.conflicts = [];
    this.nameOf = (/** @type {Conflict} */ { key }) => key;
    this.keeperName = (/** @type {string} */ keeper) => keeper;
    this.mayPick = false;
  }

  render() {
    if (!this.conflicts.length) return "";
    return html`<section class="conflicts"><h2>${icon("needsYou")} ${t("conflict.heading")}</h2>
      ${this.conflicts.map((conflict) => html`<article>
        <h3>${t("conflict.about", { name: this.nameOf(conflict), field: t(`conflict.${conflict.record}.${conflict.field}`) })}</h3>
        <p>${t("conflict.means", { standing: said(conflict.standing.value), standingBy: this.keeperName(conflict.standing.by),
          other: said(conflict.other.value), otherBy: this.keeperName(conflict.other.by) })}</p>
        ${this.mayPick ? html`<p class="row">
          <button type="button" class="firm" @click=${() => this.#pick(conflict, conflict.standing.value)}>${t("conflict.keep", { value: said(conflict.standing.value) })}</button>
          <button type="button" class="firm" @click=${() => this.#pick(conflict, conflict.other.value)}>${t("conflict.take", { value: said(conflict.other.value) })}</button></p>` : ""}
      </article>`)}</section>`;
  }

  /** @param {Conflict} conflict @param {unknown} value */
  #pick(conflict, value) {
    this.say("conflict-list-pick", { conflict, value });
  }
}

/** @param {unknown} value */
function said(value) {
  if (typeof value === "boolean") return t(value ? "conflict.on" : "conflict.off");
  return Array.isArray(value) ? value.join(", ") : t(`conflict.value.${value}`);
}
