import { html } from "lit";
import { Element } from "../ui/element.js";
import { whyButton } from "../ui/figure.js";
import { icon } from "../ui/icons.js";
import { clock, dayName, grams, kj, percent, plain, range, t } from "../text/index.js";
/** @import { AutoFeeder } from "../types.js" */

/**
 * One auto-feeder: whether it runs, what it gives, how full its hopper is, and what was found at the last look into it.
 * @fires feeder-card-run - whether it is to run
 * @fires feeder-card-why
 */
export class FeederCard extends Element {
  static properties = { feeder: { attribute: false }, foodName: { attribute: false }, day: { type: Number }, mayChange: { type: Boolean } };

  #asking = false;

  constructor() {
    super();
    /** @type {AutoFeeder | null} */
    this.feeder = null;
    this.foodName = (/** @type {string} */ key) => key;
    this.day = 0;
    this.mayChange = false;
  }

  render() {
    const { feeder } = this;
    if (!feeder) return "";
    const to = (/** @type {string} */ place) => `#/feeders/${encodeURIComponent(feeder.key)}/${place}`;
    return html`<article>
      <header class="row apart"><h3>${feeder.name}</h3><span class="tag">${icon(feeder.running ? "sent" : "onPhone")} ${t(feeder.running ? "feeder.runs" : "feeder.stands")}</span></header>
      <p>${feeder.mix.map(({ food }) => this.foodName(food)).join(", ")}</p>
      <p>${feeder.times.map(({ minute, drops }) => t("feeder.at", { time: clock(minute), count: drops })).join(" · ")}</p>
      ${this.#gives(feeder)}
      ${this.#level(feeder)}
      ${this.#hopper(feeder)}
      ${this.#found(feeder)}
      ${this.mayChange ? html`<p class="row"><a class="firm" href=${to("fill")}>${t("feeder.fill")}</a>
        <a class="firm" href=${to("weigh")}>${t("feeder.weigh")}</a>
        <a class="firm" href=${to("set")}>${t("feeder.set")}</a></p>${this.#switch(feeder)}` : ""}
    </article>`;
  }

  /** @param {AutoFeeder} feeder */
  #gives({ drops, gramsPerDay, kjPerDay, weighedDay }) {
    if (!drops) return html`<p class="flag">${icon("medium")} ${t("feeder.unweighed")}</p>`;
    return html`<p><strong>${grams(gramsPerDay.value)}</strong> ${t("feeder.aDay")} · ${kj(kjPerDay)}
        ${whyButton(() => this.say("feeder-card-why"), t("feeder.gives"))}<br>
      <small>${t("feeder.between", { span: range(gramsPerDay.low, gramsPerDay.high, grams) })} ·
        ${t("feeder.drop", { grams: grams(drops.gramsPerDrop.value), spread: percent(drops.coefficientOfVariation), day: dayName(weighedDay ?? this.day, this.day) })}</small></p>`;
  }

  /** @param {AutoFeeder} feeder */
  #level({ levelEffect }) {
    if (!levelEffect) return "";
    return html`<p><small>${t(levelEffect.chance < 0.05 ? "feeder.level.matters" : "feeder.level.same", { percent: percent(levelEffect.ratio) })}</small></p>`;
  }

  /** @param {AutoFeeder} feeder */
  #hopper({ levelGrams, hopperDays, hopperGrams }) {
    if (!levelGrams) return html`<p><small>${t("feeder.neverFilled")}</small></p>`;
    const full = hopperGrams ? Math.min(1, levelGrams.value / hopperGrams) : null;
    return html`
      ${full === null ? "" : html`<meter min="0" max="1" value=${full} aria-label=${t("feeder.level")}></meter>`}
      <p>${t("feeder.left", { grams: grams(levelGrams.value), span: range(levelGrams.low, levelGrams.high, grams) })}
      ${hopperDays ? html`<br>${t("feeder.lasts", { count: Math.max(1, Math.floor(hopperDays.value)), days: plain(Math.floor(hopperDays.value)), least: plain(Math.floor(hopperDays.low)),
        by: dayName(this.day + Math.max(0, Math.floor(hopperDays.low)), this.day) })}` : ""}</p>`;
  }

  /** @param {AutoFeeder} feeder */
  #found({ found }) {
    if (!found) return "";
    return html`<p class=${found.verdict === "asExpected" ? "" : "flag"}>${found.verdict === "asExpected" ? "" : icon("high")}
      ${t(`feeder.found.${found.verdict}`, { percent: percent(found.ratio), used: grams(found.usedGrams), expected: grams(found.expectedGrams.value) })}</p>`;
  }

  /** Switching is asked twice: it changes what the fish get while nobody is there. @param {AutoFeeder} feeder */
  #switch({ running, name }) {
    if (!this.#asking) {
      return html`<button type="button" class="quiet" @click=${() => this.#ask(true)}>${t(running ? "feeder.stop" : "feeder.start")}</button>`;
    }
    return html`<p role="alert">${t(running ? "feeder.stopSure" : "feeder.startSure", { name })}</p>
      <p class="row"><button type="button" class="firm" @click=${() => this.#run(!running)}>${t(running ? "feeder.stopYes" : "feeder.startYes")}</button>
        <button type="button" class="firm" @click=${() => this.#ask(false)}>${t("feeder.leave")}</button></p>`;
  }

  /** @param {boolean} asking */
  #ask(asking) {
    this.#asking = asking;
    this.requestUpdate();
  }

  /** @param {boolean} running */
  #run(running) {
    this.#asking = false;
    this.say("feeder-card-run", running);
  }
}
