import { html } from "lit";
import { Element } from "./element.js";
import { label } from "./names.js";
import { standingOf } from "./standing.js";
import { figure, percent, t } from "../text/index.js";
/** @import { Matter, Row, Step } from "../types.js" */

/** Says where a number comes from: each step with its inputs, formula, result and source. */
export class WhyDialog extends Element {
  static properties = { sources: { attribute: false }, fishName: { attribute: false } };

  #heading = "";
  /** @type {Step[]} */
  #steps = [];
  /** @type {Matter[]} */
  #matters = [];

  constructor() {
    super();
    /** @type {Map<string, Row>} */
    this.sources = new Map();
    this.fishName = (/** @type {string} */ key) => key;
  }

  /** @param {string} heading @param {Step[]} steps @param {Matter[]} [matters] what would change it most */
  async open(heading, steps, matters = []) {
    this.#heading = heading;
    this.#steps = steps;
    this.#matters = matters;
    this.requestUpdate();
    await this.updateComplete;
    this.querySelector("dialog")?.showModal();
  }

  render() {
    return html`
      <dialog aria-labelledby="why-heading" @click=${this.#outside}>
        <header class="row apart">
          <h2 id="why-heading">${this.#heading}</h2>
          <button type="button" class="quiet" @click=${this.#close}>${t("close")}</button>
        </header>
        ${this.#steps.length ? "" : html`<p>${t("why.none")}</p>`}
        <ol>${this.#steps.map((step) => this.#step(step))}</ol>
        ${this.#matters.length ? html`<h3>${t("why.matters")}</h3>
          <dl>${this.#matters.map(({ name, value }) => html`<div><dt>${t(`why.matters.${name}`)}</dt>
            <dd>${value > 0 ? "+" : "\u2212"}${percent(Math.abs(value))}</dd></div>`)}</dl>` : ""}
      </dialog>`;
  }

  /** @param {Step} step */
  #step(step) {
    return html`
      <li>
        <h3>${this.#what(step.what)}</h3>
        <p class="result"><output>${figure(step.value, unitOf(step))}</output></p>
        ${step.formula ? html`<p><code lang="en">${step.formula}</code></p>` : ""}
        ${step.inputs?.length ? html`<dl>${step.inputs.map((input) => html`
          <div><dt>${label("why.input", input.name)}</dt><dd>${figure(input.value, unitOf(input))}</dd></div>`)}</dl>` : ""}
        ${this.#source(step.source)}
      </li>`;
  }

  /** What a step found; where it speaks of one fish, the fish's key follows a colon. @param {string} what */
  #what(what) {
    const [key, fish] = what.split(":");
    const words = label("why.what", key);
    return fish ? t("why.of.fish", { what: words, fish: this.fishName(fish) }) : words;
  }

  /** @param {string} source one key, or several joined by a bar */
  #source(source) {
    return (source ?? "").split("|").filter(Boolean).map((key) => {
      const known = this.sources.get(key.replace(/^memory:/, ""));
      const standing = standingOf(key, known);
      return html`<p class="source"><span class="standing ${standing}">${t(`standing.${standing}`)}</span>
        ${known ? html`<cite lang="en">${known.citation}</cite>` : ""}</p>`;
    });
  }

  /** @param {MouseEvent} event */
  #outside(event) {
    if (event.target === this.querySelector("dialog")) this.#close();
  }

  #close() {
    this.querySelector("dialog")?.close();
  }
}

/** A bare ratio carries the unit "1", which nobody says. @param {{ unit: string }} number */
const unitOf = ({ unit }) => (unit === "1" ? "" : unit ?? "");
