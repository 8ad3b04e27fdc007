import { html } from "lit";
import { Asked } from "../ui/asked.js";
import { Element } from "../ui/element.js";
import { icon } from "../ui/icons.js";
import { clock, grams, t } from "../text/index.js";
import { countOf } from "./measures.js";
import { summonStrip } from "../photo/index.js";
import { summon } from "../ui/summon.js";
/** @import { Feeding, Share, Shot } from "../types.js" */

const minutesInDay = 1440;

/**
 * One feeding as it was recorded, with the ways to put it right.
 * @fires feeding-row-again - the feeding, to be given once more
 * @fires feeding-row-undo - the feeding's id
 * @fires feeding-row-correct - the feeding, and what is to change of it
 */
export class FeedingRow extends Element {
  static properties = {
    // Each reckoning of the day brings new objects; most say what those before them said.
    feeding: { attribute: false, hasChanged: (/** @type {unknown} */ now, /** @type {unknown} */ before) => JSON.stringify(now) !== JSON.stringify(before) },
    by: {},
    names: { attribute: false },
    shots: { attribute: false },
    mayChange: { type: Boolean },
    latest: { type: Number },
  };

  #shared = false;
  /** @type {Asked<Share[]>} */
  #shares = new Asked(this);
  #editing = false;

  constructor() {
    super();
    /** @type {Feeding | null} */
    this.feeding = null;
    this.by = "";
    /** @type {{ food: (key: string) => string, fish: (key: string) => string, supplement: (key: string) => string, shares: (id: string) => Promise<Share[]>, picture: (id: string) => Promise<Blob | null>, keeper: (id: string) => string } | null} */
    this.names = null;
    /** @type {Shot[]} */
    this.shots = [];
    this.mayChange = false;
    this.latest = minutesInDay - 1;
  }

  willUpdate() {
    if (this.shots.length) summonStrip();
  }

  render() {
    const { feeding, names } = this;
    if (!feeding || !names) return "";
    return html`
      <time>${clock(feeding.minute)}</time>
      <div class="what">
        ${feeding.items.map((item) => html`<p>
          ${item.count && item.measure ? countOf(item.count, item.measure) : grams(item.grams)}
          <strong>${names.food(item.food)}</strong>
          ${item.supplements?.length ? html`<small>${t("row.soaked", { supplements: item.supplements.map(names.supplement) })}</small>` : ""}
          ${item.fish ? html`<small>${t("row.byHand", { fish: names.fish(item.fish) })}</small>` : ""}
        </p>`)}
        <p class="note"><small>
          ${grams(feeding.grams)} · ${feeding.source === "feeder" ? t("row.feeder") : this.by}
          ${feeding.corrected ? html` · ${t("row.corrected")}` : ""}
          ${feeding.leftoverGrams ? html` · ${t("row.leftover", { mass: grams(feeding.leftoverGrams) })}` : ""}
          ${feeding.refusedBy?.length ? html` · ${t("row.refused", { fish: feeding.refusedBy.map(names.fish) })}` : ""}
        </small></p>
        ${feeding.note ? html`<p class="note-text">${feeding.note}</p>` : ""}
      </div>
      <span class="whereabouts">${icon(feeding.sent ? "sent" : "onPhone")}<small>${t(feeding.sent ? "row.sent" : "row.onPhone")}</small></span>
      ${this.shots.length ? html`<photo-strip .shots=${this.shots} .names=${names} .mayChange=${this.mayChange}></photo-strip>` : ""}
      ${this.#deeds(feeding)}
      ${this.#shared ? this.#eaters(this.#shares.of([feeding], () => names.shares(feeding.id)) ?? null) : ""}`;
  }

  /** @param {Feeding} feeding */
  #deeds(feeding) {
    if (this.#editing) return html`<feeding-edit .feeding=${feeding} .names=${this.names} .latest=${this.latest} @feeding-edit-done=${this.#edited}></feeding-edit>`;
    const at = clock(feeding.minute);
    return html`<div class="deeds">
      <button type="button" class="quiet" aria-expanded=${this.#shared} aria-label=${t("row.whoOf", { at })} @click=${this.#share}>${t("row.who")}</button>
      ${this.mayChange ? this.#changes(feeding, at) : ""}
      ${feeding.corrected ? html`<a class="quiet" href=${`#/history/${feeding.id}`} aria-label=${t("row.historyOf", { at })}>${t("row.history")}</a>` : ""}
    </div>`;
  }

  /** @param {Feeding} feeding @param {string} at */
  #changes(feeding, at) {
    return html`
      <button type="button" class="quiet" aria-label=${t("row.againOf", { at })}
        @click=${() => this.say("feeding-row-again", feeding)}>${t("row.again")}</button>
      <button type="button" class="quiet" aria-label=${t("row.undoOf", { at })}
        @click=${() => this.say("feeding-row-undo", feeding.id)}>${t("undo")}</button>
      <button type="button" class="quiet" aria-label=${t("row.retimeOf", { at })}
        @click=${this.#edit}>${t("row.retime")}</button>`;
  }

  /** An estimate nobody has validated in a display, and worded as one. @param {Share[] | null} shares null while they are being reckoned */
  #eaters(shares) {
    if (!shares) return html`<p role="status">${t("page.opening")}</p>`;
    const most = Math.max(...shares.map(({ grams: mass }) => mass), 0);
    return html`<div class="shares"><p><small>${t("row.whoMeans")}</small></p>
      ${shares.length ? "" : html`<p>${t("row.nobody")}</p>`}
      <ul>${[...shares].sort((a, b) => b.grams - a.grams).map(({ fish, grams: mass }) => html`<li><span>${this.names?.fish(fish)}</span> <meter min="0" max=${most} value=${mass} aria-hidden="true"></meter>
        <span>≈ ${grams(mass)}</span></li>`)}</ul></div>`;
  }

  #share() {
    this.#shared = !this.#shared;
    this.requestUpdate();
  }

  async #edit() {
    await summon("feeding-edit", async () => (await import("./feeding-edit.js")).FeedingEdit);
    this.#editing = true;
    this.requestUpdate();
  }

  /** @param {CustomEvent<object | null>} event */
  #edited({ detail }) {
    this.#editing = false;
    this.requestUpdate();
    if (detail && Object.keys(detail).length) this.say("feeding-row-correct", { feeding: this.feeding, ...detail });
  }
}
