import { html } from "lit";
import { Asked } from "../ui/asked.js";
import { FormPage } from "../ui/form-page.js";
import { whyButton } from "../ui/figure.js";
import { icon } from "../ui/icons.js";
import { clock, dayName, figure, plain, range, t } from "../text/index.js";
import { shown, unitOf } from "../text/units.js";
import { dosingForm, exchangeForm, slip, testForm, wantedForm } from "./water-forms.js";
/** @import { Desk, Ion, Step, Today, Water } from "../types.js" */
/** @import { Writing } from "../setup/forms.js" */

const mgL = (/** @type {number} */ value) => figure(value, "mg/L");
const shownTests = 6;

/** @typedef {{ writings: Writing[], slip: NonNullable<ReturnType<typeof slip>> }} Doubt what was typed, and how it may have been meant */

/** What feeding does to the water: tests, what is reckoned between and ahead of them, and what would change it. */
export class WaterPage extends FormPage {
  /** @type {Doubt | null} */
  #asking = null;
  /** @type {Asked<Water>} */
  #water = new Asked(this);

  home() {
    return { to: "#/water", words: t("water.back") };
  }

  render() {
    const { desk } = this;
    const today = desk?.today;
    if (!desk || !today) return html`<p role="status">${t("page.opening")}</p>`;
    const water = this.#of(desk, today);
    return html`
      <page-head .tank=${today.tank.name} .heading=${t("water.heading")} .when=${clock(today.minute)} .status=${desk.status}></page-head>
      ${water ? this.#place(desk, today, water) : html`<p role="status">${t("page.opening")}</p>`}
      ${this.toast(desk)}
      <why-dialog .sources=${desk.reference.sources}></why-dialog>`;
  }

  /** Reckoned once for each state of the tank. @param {Desk} desk @param {Today} today */
  #of(desk, today) {
    return this.#water.of([today], () => desk.opened.water());
  }

  /** @param {Desk} desk @param {Today} today @param {Water} water */
  #place(desk, today, water) {
    const [place = ""] = this.address();
    if (this.#asking) return this.#question(desk, this.#asking);
    if (!desk.mayRecord) return this.#overview(desk, today, water);
    if (place === "test") return this.form(desk, testForm(water), "test");
    if (place === "exchange") return this.form(desk, exchangeForm(today), "exchange");
    if (place === "dosing") return this.form(desk, dosingForm(), "dosing");
    if (place === "wanted") return this.form(desk, wantedForm(desk, water), "wanted");
    return this.#overview(desk, today, water);
  }

  /** A test that looks like the other unit is asked about first. @param {Desk} desk @param {Writing[]} writings */
  async write(desk, writings) {
    const today = desk.today;
    const test = writings.find(({ kind }) => kind === "water-test");
    const water = today && this.#of(desk, today);
    const doubt = test && water && !this.#asking ? slip(/** @type {any} */ (test.body), water) : null;
    if (!doubt) return super.write(desk, writings);
    this.#asking = { writings, slip: doubt };
    this.requestUpdate();
  }

  /** @param {Desk} desk @param {Doubt} asking */
  #question(desk, { writings, slip: { name, ion, unit, value, other } }) {
    const answer = async (/** @type {number} */ chosen) => {
      const kept = writings.map(({ kind, body }) => ({ kind, body: { ...body, [name]: chosen } }));
      await super.write(desk, kept);
      this.#asking = null;
      this.requestUpdate();
    };
    return html`<div class="card stack" role="alertdialog" aria-labelledby="slip">
      <h2 id="slip" tabindex="-1">${t("water.slip", { unit })}</h2>
      <p>${t("water.slip.means", { ion: t(`water.${ion}`), value: mgL(value), other: mgL(other) })}</p>
      <p class="row"><button type="button" class="firm" @click=${() => answer(other)}>${t("water.slip.other", { value: mgL(other) })}</button>
        <button type="button" class="firm" @click=${() => answer(value)}>${t("water.slip.asTyped", { value: mgL(value) })}</button></p>
    </div>`;
  }

  /** @param {Desk} desk @param {Today} today @param {Water} water */
  #overview(desk, today, water) {
    return html`<div class="columns">
      <div class="stack">
        ${desk.mayRecord ? html`<p class="row"><a class="firm" href="#/water/test">${icon("plus")} ${t("water.addTest")}</a>
          <a class="firm" href="#/water/exchange">${t("water.addExchange")}</a>
          <a class="firm" href="#/water/dosing">${t("water.addDosing")}</a></p>` : ""}
        ${water.volumeLitres ? "" : html`<p class="flag">${icon("medium")} ${t("water.noVolume")} <a href="#/setup/tank/">${t("more.setup")}</a></p>`}
        ${water.ions.map((ion) => this.#ion(water, ion, today))}
      </div>
      <div class="stack">
        <what-if .water=${water} .temperatureC=${today.temperature.value}
          .calc=${(/** @type {string} */ name, /** @type {object} */ input) => desk.calc(name, input)}></what-if>
        ${this.#tests(water)}
        <p class="row"><a class="firm" href="#/feeders">${t("feeder.heading")}</a>
          ${desk.mayRecord ? html`<a class="firm" href="#/water/wanted">${t("water.wanted.change")}</a>` : ""}</p>
        <p class="caution">${t("cautions.wounds.text")}</p>
      </div>
    </div>`;
  }

  /** @param {Water} water @param {Ion} ion @param {Today} today */
  #ion(water, ion, today) {
    const name = t(`water.${ion.ion}`);
    const { inputMgLPerDay: input, export: out } = ion;
    return html`<section>
      <h2>${name}</h2>
      ${ion.now ? html`<p><output><strong>${mgL(ion.now.value)}</strong></output> <small>${t("water.now", { span: range(ion.now.low, ion.now.high, mgL) })}</small>
        ${ion.inFourWeeks ? html`<br>${t("water.ahead", { span: range(ion.inFourWeeks.low, ion.inFourWeeks.high, mgL) })}` : ""}</p>`
      : html`<p>${t("water.tooFew", { count: ion.points.length, n: plain(ion.points.length), wanted: plain(water.fewestTests) })}</p>`}
      ${ion.points.length ? html`<level-chart .ion=${ion} .day=${water.day}></level-chart>` : ""}
      <dl class="facts">
        ${input ? html`<div><dt>${t("water.in")}</dt><dd>${t("water.aDay", { mgL: mgL(input.value) })} ${this.#why(t("water.in"), input.why)}</dd></div>` : ""}
        ${out ? html`<div><dt>${t("water.out")}</dt><dd>${t("water.aDay", { mgL: mgL(out.value) })} ${this.#why(t("water.out"), out.why)}</dd>
          <dd><small>${t("ration.between", { span: range(out.low, out.high, mgL) })}</small></dd></div>` : ""}
      </dl>
    </section>`;
  }

  /** @param {Water} water */
  #tests({ tests, exchanges, day }) {
    if (!tests.length && !exchanges.length) return html`<p class="empty">${t("water.none")}</p>`;
    return html`<section><h2>${t("water.recent")}</h2>
      <ul class="entries">${tests.slice(0, shownTests).map((test) => html`<li><strong>${dayName(test.day, day)} ${clock(test.minute)}</strong>
        <small>${readings(test).join(" · ")}</small></li>`)}</ul>
      ${exchanges[0] ? html`<p><small>${t("water.lastExchange", { litres: figure(shown("volume", exchanges[0].litres), unitOf("volume")), day: dayName(exchanges[0].day, day) })}</small></p>` : ""}
    </section>`;
  }

  /** @param {string} about @param {Step[]} steps */
  #why(about, steps) {
    return whyButton(() => /** @type {any} */ (this.querySelector("why-dialog")).open(about, steps), about);
  }
}

/** @param {Water["tests"][number]} test */
function readings({ nitrateMgL, phosphateMgL, ammoniaMgL, alkalinityDkh, temperatureC, salinityPpt }) {
  const said = (/** @type {string} */ what, /** @type {number | undefined} */ value, /** @type {(n: number) => string} */ say) =>
    (value === undefined ? [] : [`${t(`water.${what}`)} ${say(value)}`]);
  return [...said("nitrate", nitrateMgL, mgL), ...said("phosphate", phosphateMgL, mgL), ...said("ammonia", ammoniaMgL, mgL),
    ...said("alkalinity", alkalinityDkh, (value) => figure(value, "dKH")),
    ...said("temperature", temperatureC, (value) => figure(shown("temperature", value), unitOf("temperature"))),
    ...said("salinity", salinityPpt, (value) => figure(value, "g/kg"))];
}
