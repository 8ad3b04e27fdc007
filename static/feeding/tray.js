/** @import { Food, Glance, Recipe } from "../types.js" */
/** @import { TrayExtras, TrayItem } from "./measures.js" */
import { minutesInDay, nothingMore, usualItem } from "./measures.js";

/** What has been tapped and not recorded yet: the next feeding. */
export class Tray {
  /** @type {TrayItem[]} */
  items = [];
  /** The place of the item that is being measured. */
  open = 0;
  /** @type {TrayExtras} */
  extras = nothingMore();

  /** The food that is being measured. */
  get food() {
    return this.items[this.open]?.food;
  }

  /** When it was given. @param {{ day: number, minute: number }} now */
  givenAt({ day, minute }) {
    const { minutesAgo, then } = this.extras;
    const at = then ?? day * minutesInDay + minute - minutesAgo;
    return { day: Math.floor(at / minutesInDay), minute: at % minutesInDay };
  }

  /** A food that is in already is measured again. @param {Food} food @param {Glance} today */
  pick(food, today) {
    const place = this.items.findIndex((item) => item.food === food.key);
    if (place < 0) this.items = [...this.items, usualItem(food, today)];
    this.open = place < 0 ? this.items.length - 1 : place;
  }

  /** A recipe puts all its foods into the feeding, to be recorded with the next tap. @param {Recipe} recipe */
  cook({ items }) {
    const grams = { name: "g", grams: 1, basis: /** @type {const} */ ("weighed") };
    this.items = items.map((item) => ({ food: item.food, measure: grams, count: item.grams, grams: item.grams,
      supplements: item.supplements, fish: null }));
    this.open = 0;
  }

  /** @param {TrayItem} measured instead of the one that is being measured */
  change(measured) {
    this.items = this.items.map((item, place) => (place === this.open ? measured : item));
  }

  /** @param {number} place */
  drop(place) {
    this.items = this.items.filter((_, other) => other !== place);
    this.open = Math.max(0, Math.min(this.open, this.items.length - 1));
  }

  clear() {
    this.items = [];
    this.open = 0;
    this.extras = nothingMore();
  }
}
