import { html } from "lit";
import { Element } from "../ui/element.js";
import { t } from "../text/index.js";
import { change, newKey } from "./forms.js";
import { findSpecies, readList } from "./read-list.js";
/** @import { Row } from "../types.js" */
/** @import { ListedFish } from "./read-list.js" */
/** @import { Writing } from "./forms.js" */

const mostFound = 20;
const cmPerInch = 2.54;

/**
 * Fish come in one by one, by search, or many at once from a list somebody kept.
 * @fires fish-adder-list - the entries for a list of fish
 */
export class FishAdder extends Element {
  static properties = { species: { attribute: false } };

  #wanted = "";
  #text = "";

  constructor() {
    super();
    /** @type {Row[]} */
    this.species = [];
  }

  render() {
    const found = findSpecies(this.#wanted, this.species);
    return html`<div class="columns">
      <section>
        <h2 tabindex="-1">${t("setup.find.heading")}</h2>
        <label class="field">${t("setup.find.label")}
          <input type="search" autocomplete="off" .value=${this.#wanted} @input=${this.#search}></label>
        <p role="status">${this.#wanted ? t("setup.find.found", { count: found.length }) : ""}</p>
        <ul class="entries">${found.slice(0, mostFound).map((row) => html`<li>
          <a href=${`#/setup/new-fish/${encodeURIComponent(String(row.scientific_name))}`}>
            <strong>${row.common_name ?? row.scientific_name}</strong> <small><i lang="la">${row.scientific_name}</i></small></a></li>`)}</ul>
        <p><a class="firm" href="#/setup/new-fish/">${t("setup.find.own")}</a></p>
      </section>
      <section>
        <h2>${t("setup.list.heading")}</h2>
        <label class="field">${t("setup.list.label")}
          <textarea rows="6" placeholder=${t("setup.list.example")} .value=${this.#text} @input=${this.#list}></textarea></label>
        ${this.#read()}
      </section>
    </div>`;
  }

  #read() {
    const lines = readList(this.#text, this.species);
    const known = lines.filter(({ species }) => species);
    return html`<ul class="entries">${lines.map(({ line, species, count, length, lengthUnit }) => html`<li>
        ${species ? html`<strong>${t("fish.many", { name: species.common_name ?? species.scientific_name, n: count })}</strong>
          <small>${length === null ? t("setup.list.noLength") : `${length} ${lengthUnit}`}</small>`
        : html`<strong>${line}</strong> <small>${t("setup.list.unknown")}</small>`}</li>`)}</ul>
      ${known.length ? html`<button type="button" class="deed" @click=${() => this.say("fish-adder-list", known.map(asWriting))}>
        ${t("setup.list.add", { count: known.length })}</button>` : ""}`;
  }

  /** @param {InputEvent} event */
  #search(event) {
    this.#wanted = /** @type {HTMLInputElement} */ (event.target).value;
    this.requestUpdate();
  }

  /** @param {InputEvent} event */
  #list(event) {
    this.#text = /** @type {HTMLTextAreaElement} */ (event.target).value;
    this.requestUpdate();
  }
}

/** @param {ListedFish} listed @returns {Writing} */
function asWriting({ species, words, count, length, lengthUnit }) {
  const name = String(species?.common_name ?? words);
  const lengthCm = length === null ? null : lengthUnit === "in" ? length * cmPerInch : length;
  return change("fish", newKey(name), {
    name, species: String(species?.scientific_name ?? words), count,
    ...(lengthCm === null ? {} : { lengthCm, lengthType: "TL" }), place: "display",
  });
}
