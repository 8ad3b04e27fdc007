import { html } from "lit";
import { Element } from "../ui/element.js";
import { whyButton } from "../ui/figure.js";
import { summonPicker, summonStrip } from "../photo/index.js";
import { dayName, figure, percent, plain, t } from "../text/index.js";
import { shown, unitOf } from "../text/units.js";
import { dayOf } from "./story.js";
/** @import { Entry, Shot } from "../types.js" */
/** @import { Grown, Mass, Taste } from "./story.js" */

/** @typedef {{ masses: Mass[], grown: Grown | null, condition: { day: number, part: number, why: any[] } | null, tastes: Taste[], entries: Entry[], shots: Shot[] }} Story */
/** @typedef {{ food(key: string): string, keeper(id: string): string, picture(id: string): Promise<Blob | null> }} Names */

const scores = [1, 2, 3, 4, 5];
const firstShown = 8;

/**
 * What became of one fish: its growth, its condition, what it takes and refuses, its pictures and its history.
 * @fires fish-story-condition - a score from 1 to 5
 * @fires fish-story-photo - a picture
 * @fires fish-detail-why - heading and steps
 */
export class FishStory extends Element {
  static properties = { story: { attribute: false }, names: { attribute: false }, day: { type: Number }, mayRecord: { type: Boolean } };

  #whole = false;

  constructor() {
    super();
    /** @type {Story | null} */
    this.story = null;
    /** @type {Names | null} */
    this.names = null;
    this.day = 0;
    this.mayRecord = false;
  }

  connectedCallback() {
    super.connectedCallback();
    summonPicker();
    summonStrip();
  }

  render() {
    const { story, names } = this;
    if (!story || !names) return "";
    return html`${this.#photos(story, names)} ${this.#growth(story)} ${this.#condition(story)} ${this.#tastes(story, names)} ${this.#history(story, names)}`;
  }

  /** @param {Story} story @param {Names} names */
  #photos({ shots }, names) {
    return html`<section><h3>${t("story.photos")}</h3>
      ${shots.length ? html`<photo-strip .shots=${shots} .names=${names} .mayChange=${this.mayRecord}></photo-strip>` : html`<p><small>${t("story.noPhotos")}</small></p>`}
      ${this.mayRecord ? html`<photo-picker .picture=${null} @photo-picker-choose=${(/** @type {CustomEvent<Blob | null>} */ { detail }) =>
        detail && this.say("fish-story-photo", detail)}></photo-picker>` : ""}</section>`;
  }

  /** @param {Story} story */
  #growth({ masses, grown }) {
    return html`<section><h3>${t("story.growth")}</h3>
      ${masses.length ? html`<growth-chart .masses=${masses} .day=${this.day}></growth-chart>` : html`<p>${t("story.unmeasured")}</p>`}
      ${grown ? html`<p>${t(!grown.shows ? "story.grewUnsure" : grown.gainCm < 0 ? "story.shrank" : "story.grew", {
        gain: length(grown.shows ? Math.abs(grown.gainCm) : grown.gainCm), error: length(grown.errorCm), count: grown.days })}
        ${grown.expectedCm === undefined ? "" : t("story.expected", { expected: length(grown.expectedCm) })}</p>` : ""}</section>`;
  }

  /** @param {Story} story */
  #condition({ condition, entries }) {
    const last = entries.findLast(({ body }) => body.saw === "condition");
    return html`<section><h3>${t("story.condition")}</h3>
      <p>${last ? t("story.conditionLast", { score: last.body.score, words: t(`condition.${last.body.score}`), day: dayName(dayOf(last.happenedAt), this.day) })
        : t("story.conditionNone")}</p>
      ${condition ? html`<p>${t("story.conditionWeighed", { part: percent(condition.part), day: dayName(condition.day, this.day) })}
        ${whyButton(() => this.say("fish-detail-why", { heading: t("story.condition"), steps: condition.why }), t("story.condition"))}</p>` : ""}
      ${this.mayRecord ? html`<fieldset><legend>${t("story.conditionAsk")}</legend><div class="chips">${scores.map((score) => html`
        <button type="button" class="chip" @click=${() => this.say("fish-story-condition", score)}>${score} <small>${t(`condition.${score}`)}</small></button>`)}</div>
        </fieldset>` : ""}</section>`;
  }

  /** @param {Story} story @param {Names} names */
  #tastes({ tastes }, names) {
    return html`<section><h3>${t("story.tastes")}</h3>
      ${tastes.length ? html`<table><thead><tr><th scope="col">${t("story.food")}</th><th scope="col">${t("story.took")}</th>
          <th scope="col">${t("story.refused")}</th><th scope="col">${t("story.lastSeen")}</th></tr></thead>
        <tbody>${tastes.map(({ food, ate, refused, lastDay }) => html`<tr><th scope="row">${food ? names.food(food) : t("story.anyFood")}</th>
          <td>${plain(ate)}</td><td>${plain(refused)}</td><td>${dayName(lastDay, this.day)}</td></tr>`)}</tbody></table>` : html`<p>${t("story.noTastes")}</p>`}</section>`;
  }

  /** @param {Story} story @param {Names} names */
  #history({ entries }, names) {
    const newest = [...entries].reverse();
    const listed = this.#whole ? newest : newest.slice(0, firstShown);
    return html`<section><h3>${t("story.history")}</h3>
      <ol class="history">${listed.map((entry) => html`<li><time>${dayName(dayOf(entry.happenedAt), this.day)}</time>
        <span>${said(entry, names)}${entry.body.note ? html` <q>${entry.body.note}</q>` : ""} <small>${names.keeper(entry.by)}</small></span></li>`)}</ol>
      ${newest.length > listed.length ? html`<button type="button" class="quiet" @click=${this.#showAll}>${t("story.all", { count: newest.length })}</button>` : ""}</section>`;
  }

  #showAll() {
    this.#whole = true;
    this.requestUpdate();
  }
}

/** One entry in a few words. @param {Entry} entry @param {Names} names */
function said({ kind, body }, names) {
  const food = body.food ? names.food(body.food) : t("story.anyFood");
  if (kind === "record") return changed(body.set ?? {});
  if (body.saw === "ate") return t("story.said.ate", { food });
  if (body.saw === "refused") return t("story.said.refused", { food });
  if (body.saw === "length") return t("story.said.length", { length: length(body.cm) });
  if (body.saw === "weight") return t("story.said.weight", { mass: figure(body.grams, "g") });
  if (body.saw === "condition") return t("story.said.condition", { score: body.score, words: t(`condition.${body.score}`) });
  return t("story.said.other");
}

/** @param {Record<string, any>} set */
function changed({ species, status, place, lengthCm, name, count }) {
  if (species) return t("story.said.added");
  if (status && status !== "here") return t(`setup.status.${status}`);
  return [place && t(`setup.place.${place}`), lengthCm && t("story.said.length", { length: length(lengthCm) }), name && t("story.said.named", { name }),
    count > 1 && t("story.said.count", { count })].filter(Boolean).join(", ") || t("story.said.changed");
}

/** @param {number} cm */
const length = (cm) => figure(shown("length", cm), unitOf("length"));
