import { html } from "lit";
import { live } from "lit-html/directives/live.js";
import { Element } from "./element.js";
import { icon } from "./icons.js";
import { inTurn } from "./turns.js";
import { summon } from "./summon.js";
import { chooseTheme, theme, themes } from "./theme.js";
import { clock, loadText, t, tellTime } from "../text/index.js";
import { chooseHours, hourCycles, hours } from "../text/hours.js";
import { chooseLanguage, language, languages } from "../text/language.js";
import { chooseUnits, unitSystems, units } from "../text/units.js";
/** @import { Desk } from "../types.js" */

const cautions = ["raw", "wounds", "spines", "mains", "medicine"];
const notes = ["estimate", "energy", "basis", "sources"];

/**
 * What is needed now and then: the look, the language, the tanks, the cautions, what the figures are, and the way out.
 * @fires more-page-language - when another language was read
 */
export class MorePage extends Element {
  #leaving = false;
  /** The language that could not be read, if any. */
  #unread = "";

  connectedCallback() {
    super.connectedCallback();
    summon("glass-options", async () => (await import("./glass-options.js")).GlassOptions);
  }

  render() {
    const { desk } = this;
    if (!desk) return "";
    return html`
      <page-head .tank=${desk.tank?.name ?? ""} .heading=${t("nav.more")} .status=${desk.status}
        .when=${desk.today ? clock(desk.today.minute) : ""}></page-head>
      <div class="columns">
        <div class="stack">
          ${desk.updateReady ? html`<section class="update"><h2>${t("more.update")}</h2><p>${t("more.updateMeans")}</p>
            <button type="button" class="deed" @click=${() => desk.update()}>${t("more.updateNow")}</button></section>` : ""}
          <plain-address></plain-address>
          <section>
            <h2>${t("more.tanks")}</h2>
            <p class="row"><a class="firm" href="#/setup">${t("more.setup")}</a>
              <a class="firm" href="#/feeders">${t("feeder.heading")}</a>
              ${desk.tanks.length > 1 ? html`<a class="firm" href="#/round">${t("round.heading")}</a>` : ""}
              <a class="firm" href="#/tanks">${t("more.otherTank")}</a></p>
          </section>
          ${this.#records(desk)}
          <section>
            <h2>${t("more.theme")}</h2>
            <fieldset class="choices"><legend class="unseen">${t("more.theme")}</legend>
              ${themes.map((name) => html`<label><input type="radio" name="theme" .checked=${name === theme()}
                @change=${() => this.#look(name)}><span>${t(`theme.${name}`)}<small>${t(`theme.${name}.means`)}</small></span></label>`)}
            </fieldset>
          </section>
          ${inTurn(() => this.#choices())}
        </div>
        ${inTurn(() => this.#cautions())}
      </div>`;
  }

  #choices() {
    return html`<section>
        <h2>${t("more.units")}</h2>
        <fieldset class="choices"><legend class="unseen">${t("more.units")}</legend>
          ${unitSystems.map((name) => html`<label><input type="radio" name="units" .checked=${name === units()}
            @change=${() => this.#measure(name)}><span>${t(`units.${name}`)}<small>${t(`units.${name}.means`)}</small></span></label>`)}
        </fieldset>
      </section>
      <section>
        <h2>${t("more.hours")}</h2>
        <fieldset class="choices"><legend class="unseen">${t("more.hours")}</legend>
          ${hourCycles.map((name) => html`<label><input type="radio" name="hours" .checked=${name === hours()}
            @change=${() => this.#tell(name)}><span>${t(`hours.${name}`)}<small>${t(`hours.${name}.means`)}</small></span></label>`)}
        </fieldset>
      </section>
      <section><glass-options></glass-options></section>
      <section>
        <h2>${t("more.language")}</h2>
        <fieldset class="choices"><legend class="unseen">${t("more.language")}</legend>
          ${languages.map((code) => html`<label><input type="radio" name="language" .checked=${live(code === language())}
            @change=${() => this.#speak(code)}><span lang=${code}>${t(`language.${code}`)}</span></label>`)}
        </fieldset>
        <p role="alert">${this.#unread ? t("more.languageUnread", { language: t(`language.${this.#unread}`) }) : ""}</p>
      </section>`;
  }

  #cautions() {
    return html`<div class="stack">
      <section>
        <h2>${t("more.cautions")}</h2>
        <dl class="cautions">${cautions.map((key) => html`<div><dt>${t(`cautions.${key}`)}</dt><dd>${t(`cautions.${key}.text`)}</dd></div>`)}</dl>
      </section>
      <section>
        <h2>${t("more.figures")}</h2>
        <dl class="cautions">${notes.map((key) => html`<div><dt>${t(`figures.${key}`)}</dt><dd>${t(`figures.${key}.text`)}</dd></div>`)}</dl>
        <p><a class="firm" href="#/sources">${t("more.audit")}</a></p>
      </section>
    </div>`;
  }

  /** @param {Desk} desk */
  #records(desk) {
    const { unsent, refused, photos } = desk.status;
    return html`<section>
      <h2>${t("more.records")}</h2>
      ${photos ? html`<p class="marked">${icon("photo")} ${t("more.photosWait", { count: photos })}</p>` : ""}
      <p class="marked">${icon(unsent + refused ? "onPhone" : "sent")} ${unsent + refused ? t("more.unsent", { count: unsent + refused }) : t("more.allSent")}</p>
      <p><a class="firm" href="#/records">${t("records.heading")}</a></p>
      ${desk.tank ? html`<p class="row"><a class="firm" href=${`/api/v1/tanks/${encodeURIComponent(desk.tank.id)}/export.jsonl`} download>${t("more.export")}</a>
        <a class="firm" href=${`/api/v1/tanks/${encodeURIComponent(desk.tank.id)}/export.zip`} download>${t("more.exportPhotos")}</a>
        <a class="firm" href=${`/api/v1/tanks/${encodeURIComponent(desk.tank.id)}/export.csv`} download>${t("more.exportTable")}</a></p>` : ""}
      <p>${t("more.signedIn", { name: desk.keeper?.name ?? "" })}</p>
      <p><a class="firm" href="#/people">${t("more.people")}</a></p>
      <button type="button" class="firm" ?disabled=${this.#leaving} @click=${() => this.#leave(desk)}>${t("more.signOut")}</button>
      <p role="status">${unsent ? html`<small>${t("more.signOutUnsent")}</small>` : ""}</p>
    </section>`;
  }

  /** @param {string} name */
  #look(name) {
    chooseTheme(name);
    this.requestUpdate();
  }

  /** @param {string} name */
  #measure(name) {
    chooseUnits(name);
    this.requestUpdate();
  }

  /** @param {string} name */
  #tell(name) {
    chooseHours(name);
    tellTime();
    this.requestUpdate();
  }

  /** Nothing changes until its sentences are here. @param {string} code */
  async #speak(code) {
    this.#unread = await loadText(code).then(() => "", () => code);
    if (!this.#unread) {
      chooseLanguage(code);
      this.say("more-page-language");
    }
    this.requestUpdate();
  }

  /** @param {Desk} desk */
  async #leave(desk) {
    this.#leaving = true;
    this.requestUpdate();
    await desk.door.signOut().finally(() => (this.#leaving = false));
    this.requestUpdate();
  }
}
