import { html } from "lit";
import { guard } from "lit-html/directives/guard.js";
import { repeat } from "lit-html/directives/repeat.js";
import { Asked } from "../ui/asked.js";
import { noFishYet } from "../feeding/ration-line.js";
import { Element } from "../ui/element.js";
import { whyButton } from "../ui/figure.js";
import { icon } from "../ui/icons.js";
import { inTurn } from "../ui/turns.js";
import { feederNamed, fishNamed, foodName, label } from "../ui/names.js";
import { language } from "../text/language.js";
import { dayName, grams, kj, percent, plain, t } from "../text/index.js";
import { fishDiet, fishHeading } from "./fish-week.js";
import { behindDay } from "./behind.js";
import { sumOf, week, weeksBack } from "./weeks.js";
/** @import { Desk, Finding, Step, Sums, Today } from "../types.js" */
/** @import { Behind } from "./behind.js" */

const linesOfAdvice = 3;
const hardlyFed = 0.25;

/** The week behind: what was fed against what was due, per fish and per component, and what to change. Also on paper. */
export class WeekPage extends Element {
  /** Weeks before this one. */
  #back = 0;
  /** @type {Asked<Behind>} */
  #behind = new Asked(this);

  render() {
    const { desk } = this;
    const now = desk?.today;
    if (!desk || !now) return html`<p role="status">${t("page.opening")}</p>`;
    const end = now.day - week * this.#back;
    const behind = this.#of(desk, now, end);
    const today = this.#back ? behind?.today : now;
    return html`
      <page-head .tank=${now.tank.name} .heading=${t("week.heading")} .when=${this.#span(end, now.day)} .status=${desk.status}></page-head>
      <p class="row steps"><button type="button" class="firm" @click=${() => this.#step(1)} ?disabled=${this.#back >= weeksBack - 1}>${t("week.earlier")}</button>
        <button type="button" class="firm" @click=${() => this.#step(-1)} ?disabled=${this.#back === 0}>${t("week.later")}</button>
        <button type="button" class="firm" @click=${() => print()}>${t("week.print")}</button></p>
      ${today ? guard([today, behind, desk.reference, language()], () => this.#columns(desk, now, today, behind))
        : html`<p role="status">${t("page.opening")}</p>`}
      <why-dialog .sources=${desk.reference.sources} .fishName=${(/** @type {string} */ key) => fishNamed(desk, key)}></why-dialog>`;
  }

  /** @param {Desk} desk @param {Today} now @param {Today} today @param {Behind | undefined} behind undefined while it is being reckoned */
  #columns(desk, now, today, behind) {
    const before = behind?.before;
    if (!today.fish.length) return noFishYet();
    return html`<div class="columns">
      <div class="stack">
        ${inTurn(() => this.#advice(desk, today))}
        ${inTurn(() => this.#energy(today, before))}
        ${inTurn(() => html`<week-chart .weeks=${behind?.weeks ?? []} .day=${now.day}></week-chart>`)}
      </div>
      ${inTurn(() => html`<section class="stack fishes">
        <h2>${t("week.fish")}</h2>
        ${repeat(today.fish, ({ id }) => id, (fish) => inTurn(() => html`<article>
          ${fishHeading(fish, before?.fish.find(({ id }) => id === fish.id))}
          ${guard([today, language()], () => fishDiet(fish, today))}
        </article>`))}
      </section>`)}
    </div>`;
  }

  /** What stands behind a day; that of an older state of the journal stays on screen until the answer is there. @param {Desk} desk @param {Today} now @param {number} end */
  #of(desk, now, end) {
    const behind = this.#behind.of([now, end], () => behindDay(desk, now, end));
    return behind?.end === end ? behind : undefined;
  }

  /** @param {number} end @param {number} today */
  #span(end, today) {
    return t("week.span", { from: dayName(end - week + 1, today), to: dayName(end, today) });
  }

  /** What to change next week, in three lines. @param {Desk} desk @param {Today} today */
  #advice(desk, { findings, day }) {
    return html`<section>
      <h2>${t("week.change")}</h2>
      ${findings.length ? html`<ol>${findings.slice(0, linesOfAdvice).map((finding) => html`<li>${icon(finding.severity)}
        <strong>${title(desk, finding)}</strong>
        ${finding.offer[0] ? t("week.offer", { grams: grams(finding.offer[0].grams), food: foodName(desk, finding.offer[0].food) }) : ""}
        <small>${t("week.since", { day: dayName(finding.sinceDay, day) })}</small>
        ${this.#why(title(desk, finding), finding.why)}</li>`)}</ol>` : html`<p class="calm">${icon("today")} ${t("week.nothing")}</p>`}
      ${findings.length > linesOfAdvice ? html`<p><small><a href="#/today">${t("week.more", { count: findings.length - linesOfAdvice })}</a></small></p>` : ""}
    </section>`;
  }

  /** @param {Today} today @param {Sums | undefined} before undefined while it is being reckoned */
  #energy(today, before) {
    const now = sumOf(today.days.slice(-week));
    const then = before && sumOf(before.days.slice(-week));
    const missed = today.days.slice(-week).filter(({ dueKj, givenKj, day }) => day < today.day && dueKj > 0 && givenKj < hardlyFed * dueKj);
    return html`<section>
      <h2>${t("week.energy")}</h2>
      <dl class="facts">
        <div><dt>${t("week.given")}</dt><dd><strong>${kj(now.given)}</strong></dd><dd><small>${t("week.ofDue", { due: kj(now.due), part: part(now) })}</small></dd></div>
        <div><dt>${t("week.before")}</dt><dd>${then ? kj(then.given) : "…"}</dd>
          <dd><small>${then ? t("week.ofDue", { due: kj(then.due), part: part(then) }) : "\u00a0"}</small></dd></div>
      </dl>
      <p>${missed.length ? t("week.missed", { days: missed.map(({ day }) => dayName(day, today.day)) }) : t("week.noneMissed")}
        ${this.#why(t("week.energy"), today.ration.dueKj.why)}</p>
      ${this.#back === 0 && today.ration.remainingKj.value > 0 ? html`<p><small>${t("week.notOver", { due: kj(today.ration.remainingKj.value) })}</small></p>` : ""}
    </section>`;
  }

  /** @param {string} about @param {Step[]} steps */
  #why(about, steps) {
    return whyButton(() => /** @type {any} */ (this.querySelector("why-dialog")).open(about, steps), about);
  }

  /** @param {number} by */
  #step(by) {
    this.#back = Math.min(weeksBack - 1, Math.max(0, this.#back + by));
    this.requestUpdate();
  }
}

/** @param {Desk} desk @param {Finding} finding */
const title = (desk, { rule, facts, days, about, component }) => t(`finding.${rule}.title`, { ...facts, days, count: days, about: feederNamed(desk, about),
  component: component ? label("component", component) : "" });

/** @param {{ due: number, given: number }} sum */
const part = ({ due, given }) => (due > 0 ? percent(given / due) : plain(0));
