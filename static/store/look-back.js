/** @import { Entry } from "../types.js" */
import { Phone } from "./database.js";

/** Some of the first feedings may have been taken back; among so many one stands. */
const FIRST_ONES = 50;

/**
 * Reads of a tank's journal what its day is reckoned from. Feedings are nearly all of a journal, and old ones change nothing
 * today, so they are read from a day on; everything else is read whole.
 */
export class LookBack {
  #phone;

  /** @param {string} [name] of the database */
  constructor(name) {
    this.#phone = new Phone(name);
  }

  /** @param {string} tank @returns {Promise<Entry[]>} all that is no feeding */
  async changes(tank) {
    const feedings = [tank, "feeding"];
    const around = await Promise.all([
      this.#read(IDBKeyRange.bound([tank], feedings, false, true)),
      this.#read(IDBKeyRange.bound([...feedings, []], [tank, []], true)),
    ]);
    return around.flat();
  }

  /**
   * @param {string} tank
   * @param {string} from the first day, such as 2026-11-25
   * @param {string} [before] the day that is not read any more
   */
  feedings(tank, from, before) {
    return this.#read(IDBKeyRange.bound([tank, "feeding", from], [tank, "feeding", before ?? []], false, true));
  }

  /** With these a log is known to have begun. @param {string} tank */
  firstFeedings(tank) {
    return this.#read(IDBKeyRange.bound([tank, "feeding"], [tank, "feeding", []]), FIRST_ONES);
  }

  /** @param {string} id @returns {Promise<Entry | undefined>} */
  entry(id) {
    return this.#phone.with((database) => database.get("entries", id));
  }

  /** What the feed page is drawn from before the day is reckoned. @param {string} tank @param {unknown} glance */
  keepGlance(tank, glance) {
    return this.#phone.write(["settings"], (reach) => reach("settings").put(glance, `glance ${tank}`));
  }

  /** @param {IDBKeyRange} range @param {number} [limit] @returns {Promise<Entry[]>} */
  #read(range, limit) {
    return this.#phone.with((database) => database.getAllFromIndex("entries", "byKind", range, limit));
  }
}
