import { html } from "lit";
import { repeat } from "lit-html/directives/repeat.js";
import { Element } from "../ui/element.js";
import { foodIcon, icon } from "../ui/icons.js";
import { nameOf, shortFoodName } from "../ui/names.js";
import { t } from "../text/index.js";
/** @import { Food } from "../types.js" */

const mostFound = 12;

/**
 * The foods this tank gets, the likely ones first, and a search over all others. Says what was tapped; stores nothing.
 * @fires food-tiles-pick - the food
 */
export class FoodTiles extends Element {
  static properties = {
    usual: { attribute: false },
    all: { attribute: false },
    amounts: { attribute: false },
    chosen: { attribute: false },
  };

  #wanted = "";

  constructor() {
    super();
    /** @type {Food[]} */
    this.usual = [];
    /** @type {Food[]} */
    this.all = [];
    /** @type {Map<string, string>} what one tap would give, by food */
    this.amounts = new Map();
    /** @type {Set<string>} foods already in this feeding */
    this.chosen = new Set();
  }

  render() {
    const found = this.#found();
    return html`
      ${this.#grid(this.#wanted ? found : this.usual)}
      ${this.#wanted && !found.length ? html`<p role="status">${t("tiles.nothing", { wanted: this.#wanted })}</p>` : ""}
      <label class="search">${icon("search")}<span class="unseen">${t("tiles.search")}</span>
        <input type="search" .value=${this.#wanted} placeholder=${t("tiles.search")} autocomplete="off"
          @input=${this.#search}>
      </label>`;
  }

  /** @param {Food[]} foods */
  #grid(foods) {
    return html`<ul>${repeat(foods, ({ key }) => key, (food) => html`
      <li><button type="button" class="tile" data-food=${food.key} aria-pressed=${this.chosen.has(food.key)} @click=${() => this.#pick(food)}>
        ${foodIcon(food.category)}
        <span class="name">${shortFoodName(food)}</span>
        <small>${this.amounts.get(food.key) ?? t(`category.${food.category}`)}</small>
      </button></li>`)}</ul>`;
  }

  #found() {
    const words = this.#wanted.toLowerCase().split(/\s+/).filter(Boolean);
    return this.all
      .filter(({ key, name, category }) => words.every((word) => `${nameOf({ key, name })} ${name} ${category} ${t(`category.${category}`)}`.toLowerCase().includes(word)))
      .slice(0, mostFound);
  }

  /** @param {InputEvent} event */
  #search(event) {
    this.#wanted = /** @type {HTMLInputElement} */ (event.target).value;
    this.requestUpdate();
  }

  /** @param {Food} food */
  #pick(food) {
    this.#wanted = "";
    this.requestUpdate();
    this.say("food-tiles-pick", food);
  }
}
