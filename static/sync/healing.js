/** @import { Entry, JournalSums, PageSum } from "../types.js" */
/** @import { PhoneStore } from "../store/phone-store.js" */
import { MOST_ENTRIES } from "./batch.js";
import { checksumOf } from "./checksum.js";
import { getJson } from "./http.js";

const EVERY_MILLIS = 24 * 3600_000;

/**
 * Holds this phone's copy of a journal against the server's sums, page by page, and fetches anew what differs. Only what was
 * pulled is mended; what was tapped here and waits is never touched.
 */
export class Healing {
  #store;

  /** @param {PhoneStore} store */
  constructor(store) {
    this.#store = store;
  }

  /** Once a day, or sooner when the last look was forgotten. @param {string} tank @returns {Promise<boolean>} whether anything was mended */
  async look(tank) {
    const [cursor, last] = await Promise.all([this.#store.copy.cursor(tank), this.#store.copy.lastCheck(tank)]);
    if (!cursor || (last && Math.abs(Date.now() - Date.parse(last.at)) < EVERY_MILLIS)) return false;
    const sums = /** @type {JournalSums} */ (await getJson(`/api/v1/tanks/${tank}/checksums?size=${MOST_ENTRIES}`));
    // A restored journal is pulled from its beginning anyway.
    if (sums.epoch !== cursor.epoch) return false;
    const check = { at: new Date().toISOString(), entries: 0, mended: 0 };
    for (const page of sums.pages.filter(({ to }) => to <= cursor.after)) {
      check.entries += page.count;
      if (!(await this.#sound(tank, page))) check.mended += await this.#fetchAnew(tank, page);
    }
    await this.#store.copy.checked(tank, check);
    return check.mended > 0;
  }

  /** @param {string} tank @param {PageSum} page */
  async #sound(tank, { from, to, count, checksum }) {
    const held = await this.#store.copy.between(tank, from, to);
    return held.length === count && checksumOf(held) === checksum;
  }

  /** @param {string} tank @param {PageSum} page @returns {Promise<number>} how many of its entries were not as on the server */
  async #fetchAnew(tank, { from, to, count, checksum }) {
    /** @type {{ entries: Entry[] }} */
    const page = await getJson(`/api/v1/tanks/${tank}/entries?after=${from - 1}&limit=${count}`);
    // What does not add up on its way here mends nothing; the next look tries again.
    if (checksumOf(page.entries) !== checksum) return 0;
    const held = new Map((await this.#store.copy.between(tank, from, to)).map((entry) => [entry.id, checksumOf([entry])]));
    const differing = page.entries.filter((entry) => held.get(entry.id) !== checksumOf([entry])).length;
    await this.#store.copy.mend(tank, from, to, page.entries, await this.#store.device());
    return Math.max(1, differing);
  }
}
