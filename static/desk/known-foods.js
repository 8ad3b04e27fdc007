/** @import { Food } from "../types.js" */

/** The published foods together with a tank's own, put together anew only when one of them is another. */
export class KnownFoods {
  /** @type {Map<string, Food>} */
  #published = new Map();
  /** @type {Food[]} */
  #own = [];
  /** @type {Map<string, Food>} */
  #all = new Map();

  /** @param {Map<string, Food>} published @param {Food[]} own @returns {Map<string, Food>} by key */
  of(published, own) {
    if (!own.length) return published;
    if (this.#own !== own || this.#published !== published) {
      this.#published = published;
      this.#own = own;
      this.#all = new Map([...published, ...own.map((food) => /** @type {[string, Food]} */ ([food.key, food]))]);
    }
    return this.#all;
  }
}
