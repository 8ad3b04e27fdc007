import { html } from "lit";
import { guard } from "lit-html/directives/guard.js";
import { repeat } from "lit-html/directives/repeat.js";
import { noFishYet } from "../feeding/ration-line.js";
import { Element } from "../ui/element.js";
import { figure, whyButton } from "../ui/figure.js";
import { icon } from "../ui/icons.js";
import { inTurn } from "../ui/turns.js";
import { feederNamed, fishNamed, foodName, keeperName } from "../ui/names.js";
import { clock, figure as withUnit, grams, range, t } from "../text/index.js";
import { shown, unitOf } from "../text/units.js";
/** @import { Conflict, Desk, Finding, Matter, Step, Today } from "../types.js" */

const degrees = (/** @type {number} */ value) => withUnit(shown("temperature", value), unitOf("temperature"));

/** How the tank stands today: the ration, what is lacking, and the four weeks behind it. */
export class TodayPage extends Element {
  render() {
    const { desk } = this;
    const today = desk?.today;
    if (!desk || !today) return html`<p role="status">${t("page.opening")}</p>`;
    const names = (/** @type {string} */ key) => foodName(desk, key);
    return html`
      <page-head .tank=${today.tank.name} .heading=${t("nav.today")} .when=${clock(today.minute)} .status=${desk.status}></page-head>
      <conflict-list .conflicts=${today.conflicts} .mayPick=${desk.mayRecord} .nameOf=${(/** @type {Conflict} */ { record, key }) =>
        (record === "fish" ? fishNamed(desk, key) : feederNamed(desk, key))} .keeperName=${(/** @type {string} */ keeper) => keeperName(desk, keeper)}
        @conflict-list-pick=${(/** @type {CustomEvent<{ conflict: Conflict, value: unknown }>} */ { detail: { conflict: { record, key, field, seen }, value } }) =>
          desk.record("record", { record, key, set: { [field]: value }, saw: { [field]: seen } })}></conflict-list>
      <div class="columns">
        <div class="stack">
          ${today.fish.length ? html`<ration-panel .ration=${today.ration} .foodName=${names}
            @ration-panel-why=${(/** @type {CustomEvent<"due" | "given" | "remaining">} */ event) => this.#whyRation(today, event.detail)}></ration-panel>` : noFishYet()}
          ${inTurn(() => this.#water(today))}
        </div>
        ${guard([today, desk.reference], () => inTurn(() => this.#findings(desk, today, names)))}
        ${inTurn(() => html`<day-chart .days=${today.days} .day=${today.day}></day-chart>`)}
      </div>
      <why-dialog .sources=${desk.reference.sources}
        .fishName=${(/** @type {string} */ key) => fishNamed(desk, key)}></why-dialog>`;
  }

  /** @param {Today} today */
  #water({ temperature, temperatureFlag, biomassGrams, fish }) {
    const count = fish.reduce((sum, one) => sum + one.count, 0);
    return html`<dl class="facts">
      <div><dt>${icon("warm")} ${t("today.temperature")}</dt>
        <dd>${figure(temperature, degrees)} ${this.#why(t("today.temperature"), temperature.why)}</dd>
        ${temperatureFlag === "inRange" ? "" : html`<dd class="flag">${icon(temperatureFlag === "alarm" ? "high" : "medium")}
          ${t(`temperature.${temperatureFlag}`)}</dd>`}</div>
      <div><dt>${icon("fish")} ${t("today.biomass", { count })}</dt>
        <dd>${figure(biomassGrams, grams)} ${this.#why(t("today.biomass", { count }), biomassGrams.why)}</dd>
        ${biomassGrams.high > 0 ? html`<dd><small>${t("ration.between", { span: range(biomassGrams.low, biomassGrams.high, grams) })}</small></dd>` : ""}</div>
    </dl>`;
  }

  /** @param {Desk} desk @param {Today} today @param {(key: string) => string} names */
  #findings(desk, { findings, fish, day }, names) {
    return html`<section class="findings beside">
      <h2>${t("findings.heading")}</h2>
      ${findings.length || !fish.length ? "" : html`<p class="calm">${icon("today")} ${t("findings.none")}</p>`}
      ${repeat(findings, ({ key }) => key, (finding) => inTurn(() => html`
        <finding-card .finding=${finding} .day=${day} .foodName=${names}
          .fishNames=${finding.fish.map((key) => fishNamed(desk, key))} .about=${feederNamed(desk, finding.about)}
          @finding-card-why=${(/** @type {CustomEvent<Finding>} */ { detail }) =>
            this.#open(t(`finding.${detail.rule}.title`, { ...detail.facts, count: detail.days, about: feederNamed(desk, detail.about) }), detail.why)}></finding-card>`))}
      ${inTurn(() => html`<p><small>${t("findings.advice")}</small></p>`)}
    </section>`;
  }

  /** @param {Today} today @param {"due" | "given" | "remaining"} which */
  #whyRation({ ration }, which) {
    const of = { due: [t("ration.due"), ration.dueKj], given: [t("ration.given"), ration.givenKj],
      remaining: [t("ration.stillDue"), ration.remainingKj] };
    const [heading, { why }] = /** @type {[string, { why: Step[] }]} */ (of[which]);
    this.#open(heading, why, which === "given" ? [] : ration.matters);
  }

  /** @param {string} about @param {Step[]} steps */
  #why(about, steps) {
    return whyButton(() => this.#open(about, steps), about);
  }

  /** @param {string} heading @param {Step[]} steps @param {Matter[]} [matters] */
  #open(heading, steps, matters) {
    /** @type {any} */ (this.querySelector("why-dialog")).open(heading, steps, matters);
  }
}
