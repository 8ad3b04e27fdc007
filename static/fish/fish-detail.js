import { html } from "lit";
import { Element } from "../ui/element.js";
import { figure, whyButton } from "../ui/figure.js";
import { icon } from "../ui/icons.js";
import { fishName, label } from "../ui/names.js";
import { dayName, grams, kj, percent, range, t } from "../text/index.js";
import { gapRing, shareBand } from "./component-pictures.js";
/** @import { Fish, Finding, Food } from "../types.js" */

/**
 * Everything known about one fish, and the two things one sees at the glass: it ate, it refused.
 * @fires fish-detail-saw - "ate" or "refused", and the food if one was chosen
 * @fires fish-detail-why - heading and steps
 * @fires fish-detail-close
 */
export class FishDetail extends Element {
  static properties = {
    fish: { attribute: false },
    findings: { attribute: false },
    foods: { attribute: false },
    guild: {},
    warning: {},
    harm: {},
    day: { type: Number },
    story: { attribute: false },
    names: { attribute: false },
    mayRecord: { type: Boolean },
  };

  constructor() {
    super();
    /** @type {Fish | null} */
    this.fish = null;
    /** @type {Finding[]} */
    this.findings = [];
    /** @type {Food[]} */
    this.foods = [];
    this.guild = "";
    this.warning = "";
    this.harm = "";
    this.day = 0;
    /** @type {import("./fish-story.js").Story | null} */
    this.story = null;
    /** @type {import("./fish-story.js").Names | null} */
    this.names = null;
    this.mayRecord = false;
  }

  render() {
    const { fish } = this;
    if (!fish) return html`<p class="empty">${t("fish.choose")}</p>`;
    return html`<article>
      <button type="button" class="quiet back" @click=${() => this.say("fish-detail-close")}>${icon("back")} ${t("fish.all")}</button>
      <header>
        <h2 tabindex="-1">${fishName(fish)}</h2>
        <p><i lang="la">${fish.species}</i> · ${this.guild}</p>
        ${fish.place === "isolation" ? html`<p class="tag">${icon("isolation")} ${t("fish.isolation")}</p>` : ""}
      </header>
      ${this.warning ? html`<p class="caution">${icon(fish.warningLevel === "do_not_keep" ? "high" : "medium")}
        <span><strong>${t(`warningLevel.${fish.warningLevel}`)}</strong> ${this.warning}</span></p>` : ""}
      ${this.harm ? html`<p class="caution">${this.harm}</p>` : ""}
      ${this.mayRecord ? this.#seen() : ""}
      ${this.#figures(fish)}
      ${this.findings.map((finding) => this.#finding(finding))}
      ${this.#components(fish)}
      ${this.mayRecord ? html`<p class="row"><a class="firm" href=${`#/setup/size/${encodeURIComponent(fish.id)}`}>${t("setup.fish.measure")}</a>
        <a class="firm" href=${`#/setup/fish/${encodeURIComponent(fish.id)}/page`}>${t("fish.change")}</a></p>` : ""}
      <p><small>${t("fish.estimate")}</small></p>
      ${this.story ? html`<fish-story .story=${this.story} .names=${this.names} .day=${this.day} .mayRecord=${this.mayRecord}></fish-story>`
        : html`<p role="status">${t("story.opening")}</p>`}
    </article>`;
  }

  #seen() {
    return html`<form class="seen" @submit=${(/** @type {Event} */ event) => event.preventDefault()}>
      <label>${t("fish.sawFood")}<select name="food">
        <option value="">${t("fish.anyFood")}</option>
        ${this.foods.map(({ key, name }) => html`<option value=${key}>${name}</option>`)}
      </select></label>
      <button type="button" class="firm" @click=${() => this.#saw("ate")}>${t("fish.ate")}</button>
      <button type="button" class="firm" @click=${() => this.#saw("refused")}>${t("fish.refused")}</button>
    </form>`;
  }

  /** @param {Fish} fish */
  #figures(fish) {
    const { weightGrams: weight, dueKj, gotKj } = fish;
    return html`<dl class="facts">
      <div><dt>${t(fish.count > 1 ? "fish.massEach" : "fish.mass")}</dt>
        <dd>${figure(weight, grams)} ${this.#why(t("fish.mass"), weight.why)}</dd>
        <dd><small>${t(`basis.${weight.basis}`)} · ${range(weight.low, weight.high, grams)}${fish.staleDays > 0
          ? ` · ${t("fish.stale", { count: fish.staleDays })}` : ""}</small></dd></div>
      <div><dt>${t("fish.due")}</dt>
        <dd>${figure(dueKj, kj)} ${this.#why(t("fish.due"), dueKj.why)}</dd>
        <dd><small>${t("ration.between", { span: range(dueKj.low, dueKj.high, kj) })}</small></dd></div>
      <div><dt>${t("fish.got")}</dt>
        <dd><span class="figure estimated"><span class="about">≈</span>${kj(gotKj.value)}</span></dd>
        <dd><small>${t(gotKj.low < gotKj.high ? "fish.gotGramsBetween" : "fish.gotGrams", {
          mass: grams(fish.gotGrams), span: range(gotKj.low, gotKj.high, kj) })}</small></dd></div>
      <div><dt>${t("fish.week")}</dt>
        <dd>${t("fish.weekOf", { got: kj(fish.weekGotKj), due: kj(fish.weekDueKj) })}</dd>
        <dd><small>${fish.lastTookDay === undefined ? t("fish.neverTook") : t("fish.lastTook", { day: dayName(fish.lastTookDay, this.day) })}</small></dd></div>
    </dl>`;
  }

  /** @param {Finding} finding */
  #finding({ rule, severity, facts, days, component, why }) {
    const words = { ...facts, days, count: days, component: component ? label("component", component) : "" };
    const title = t(`finding.${rule}.title`, words);
    return html`<p class="caution ${severity}">${icon(severity)}
      <span><strong>${t(`severity.${severity}`)}</strong> ${title}</span> ${this.#why(title, why)}</p>`;
  }

  /** @param {Fish} fish */
  #components({ components }) {
    return html`<h3>${t("fish.components")}</h3>
      <table class="components">
        <thead><tr><th scope="col">${t("fish.component")}</th><th scope="col">${t("fish.share28")}</th>
          <th scope="col">${t("fish.lastTaken")}</th></tr></thead>
        <tbody>${components.map((row) => html`<tr>
          <th scope="row">${label("component", row.component)}</th>
          <td><span>${row.share === undefined ? t("band.nothing") : percent(row.share)}
            ${row.max ? html`<small>${t("band.short", { least: percent(row.min), most: percent(row.max) })}</small>` : ""}</span>
            ${shareBand(row)}</td>
          <td>${gapRing(row)}</td></tr>`)}</tbody>
      </table>
      <p><small>${t("band.key")}</small></p>`;
  }

  /** @param {"ate" | "refused"} saw */
  #saw(saw) {
    const select = /** @type {HTMLSelectElement} */ (this.querySelector("select[name=food]"));
    this.say("fish-detail-saw", { saw, food: select.value || undefined });
  }

  /** @param {string} heading @param {import("../types.js").Step[]} steps */
  #why(heading, steps) {
    return whyButton(() => this.say("fish-detail-why", { heading, steps }), heading);
  }
}
