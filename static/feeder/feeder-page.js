import { html } from "lit";
import { repeat } from "lit-html/directives/repeat.js";
import { FormPage } from "../ui/form-page.js";
import { icon } from "../ui/icons.js";
import { fishNamed, foodName } from "../ui/names.js";
import { label } from "../ui/names.js";
import { clock, dayName, grams, kj, percent, plain, range, t } from "../text/index.js";
import { change } from "../setup/forms.js";
import { dryPartForm, feederForm, fillForm } from "./feeder-forms.js";
/** @import { AutoFeeder, Desk, Proposal, Today } from "../types.js" */

/** The tank's auto-feeders: what they give, how long they last, and the portions that would make up the dry part of the ration. */
export class FeederPage extends FormPage {
  #sure = false;

  home() {
    return { to: "#/feeders", words: t("feeder.back") };
  }

  render() {
    const { desk } = this;
    const today = desk?.today;
    if (!desk || !today) return html`<p role="status">${t("page.opening")}</p>`;
    return html`
      <page-head .tank=${today.tank.name} .heading=${t("feeder.heading")} .when=${clock(today.minute)} .status=${desk.status}></page-head>
      ${this.#place(desk, today)}
      ${this.toast(desk)}
      <why-dialog .sources=${desk.reference.sources}></why-dialog>`;
  }

  /** @param {Desk} desk @param {Today} today */
  #place(desk, today) {
    const [key = "", place = ""] = this.address();
    const known = today.feeders.find((feeder) => feeder.key === key);
    if (!desk.mayRecord || !key) return this.#overview(desk, today);
    if (key === "new") return this.form(desk, feederForm(desk, today, ""), "new");
    if (key === "part") return this.form(desk, dryPartForm(desk, today), "part");
    if (!known) return this.#overview(desk, today);
    if (place === "fill") return this.form(desk, fillForm(desk, today, key), `fill/${key}`);
    if (place === "weigh") return this.#weigh(desk, known);
    return this.form(desk, feederForm(desk, today, key), `set/${key}`);
  }

  /** @param {Desk} desk @param {AutoFeeder} feeder */
  #weigh(desk, feeder) {
    return html`${this.back()}<div class="card stack">
      <h2 tabindex="-1">${t("feeder.weigh.heading", { name: feeder.name })}</h2>
      <p>${t("feeder.weigh.intro")}</p>
      <p class="caution">${t("cautions.mains.text")}</p>
      <drop-scale .calc=${(/** @type {string} */ name, /** @type {object} */ input) => desk.calc(name, input)}
        @drop-scale-done=${(/** @type {CustomEvent} */ { detail }) =>
          this.write(desk, [{ kind: "weighing", body: { feeder: feeder.key, ...detail } }])}></drop-scale>
    </div>`;
  }

  /** @param {Desk} desk @param {Today} today */
  #overview(desk, today) {
    const { feeders, proposal } = today;
    return html`<div class="columns">
      <section class="stack">
        <h2>${t("feeder.list")}</h2>
        ${feeders.length ? "" : html`<p class="empty">${t("feeder.none")}</p>`}
        ${repeat(feeders, ({ key }) => key, (feeder) => html`<feeder-card .feeder=${feeder} .day=${today.day} .mayChange=${desk.mayRecord}
          .foodName=${(/** @type {string} */ food) => foodName(desk, food)}
          @feeder-card-why=${() => /** @type {any} */ (this.querySelector("why-dialog")).open(t("feeder.gives"), feeder.gramsPerDay.why)}
          @feeder-card-run=${(/** @type {CustomEvent<boolean>} */ { detail }) => this.write(desk, [change("feeder", feeder.key, { running: detail })])}></feeder-card>`)}
        ${desk.mayRecord ? html`<p><a class="firm" href="#/feeders/new">${icon("plus")} ${t("feeder.new")}</a></p>` : ""}
      </section>
      <div class="stack">
        ${proposal ? this.#proposal(desk, today, proposal) : ""}
        ${feeders.some(({ running }) => running) ? this.#away(desk, today) : ""}
        <p class="caution">${t("cautions.mains.text")}</p>
      </div>
    </div>`;
  }

  /** @param {Desk} desk @param {Today} today @param {Proposal} proposal */
  #proposal(desk, today, { targetKj, bringsKj, feeders }) {
    const named = (/** @type {string} */ key) => today.feeders.find((feeder) => feeder.key === key);
    const same = feeders.every(({ feeder, times }) => JSON.stringify(named(feeder)?.times) === JSON.stringify(times));
    return html`<section>
      <h2>${t("feeder.proposal")}</h2>
      <p>${t("feeder.proposal.means", { part: percent(today.dryPart), target: kj(targetKj), span: range(bringsKj.low, bringsKj.high, kj) })}
        ${desk.mayRecord ? html`<a href="#/feeders/part">${t("feeder.part.change")}</a>` : ""}</p>
      <table><thead><tr><th scope="col">${t("feeder.list.one")}</th><th scope="col">${t("feeder.now")}</th><th scope="col">${t("feeder.proposed")}</th></tr></thead>
        <tbody>${feeders.map(({ feeder, times, gramsPerDay }) => html`<tr><th scope="row">${named(feeder)?.name}</th>
          <td>${said(named(feeder)?.times ?? [])}</td><td>${said(times)}<br><small>${grams(gramsPerDay.value)}</small></td></tr>`)}</tbody></table>
      ${!desk.mayRecord ? "" : same ? html`<p>${t("feeder.proposal.same")}</p>` : this.#sure ? html`
        <p role="alert">${t("feeder.proposal.sure")}</p>
        <p class="row"><button type="button" class="firm" @click=${() => this.#take(desk, feeders)}>${t("feeder.proposal.yes")}</button>
          <button type="button" class="firm" @click=${() => this.#ask(false)}>${t("feeder.leave")}</button></p>`
        : html`<p><button type="button" class="firm" @click=${() => this.#ask(true)}>${t("feeder.proposal.take")}</button></p>`}
    </section>`;
  }

  /** How long nobody needs to come. @param {Desk} desk @param {Today} today */
  #away(desk, today) {
    const { away } = today;
    const by = (/** @type {number} */ days) => dayName(today.day + Math.max(0, Math.floor(days)), today.day);
    return html`<section>
      <h2>${t("feeder.away")}</h2>
      <p>${away.hopperDays === undefined ? t("feeder.away.unknown") : t("feeder.away.hopper", { days: plain(Math.floor(away.hopperDays)), day: by(away.hopperDays) })}</p>
      ${away.lacks.length ? html`<p>${t("feeder.away.lacks")}</p>
        <ul>${away.lacks.map(({ component, days, fish }) => html`<li>${t("feeder.away.lack", { component: label("component", component), day: by(days),
          fish: fish.map((key) => fishNamed(desk, key)) })}</li>`)}</ul>` : html`<p>${t("feeder.away.nothing")}</p>`}
    </section>`;
  }

  /** @param {boolean} sure */
  #ask(sure) {
    this.#sure = sure;
    this.requestUpdate();
  }

  /** A person has said so twice; nothing else changes a feeder. @param {Desk} desk @param {Proposal["feeders"]} feeders */
  async #take(desk, feeders) {
    this.#sure = false;
    await this.write(desk, feeders.map(({ feeder, times }) => change("feeder", feeder, { drops: times.map(({ drops }) => drops) })));
  }
}

/** @param {{ minute: number, drops: number }[]} times */
const said = (times) => times.map(({ minute, drops }) => t("feeder.at", { time: clock(minute), count: drops })).join(", ");
