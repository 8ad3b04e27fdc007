/** @import { TankRow, Today } from "../types.js" */
/** @import { PhoneStore } from "../store/phone-store.js" */
/** @import { PhoneClock } from "../sync/phone-clock.js" */
/** @import { Sync } from "../sync/sync.js" */
import { Engine } from "../engine/index.js";
import { isoOf } from "../text/local-time.js";

/** How the tanks stand that are not on the desk, from what this phone holds of them. */
export class OtherTanks {
  #store;
  #sync;
  #clock;
  /** @type {Engine | null} */
  #aside = null;

  /** @param {PhoneStore} store @param {Sync} sync @param {PhoneClock} clock */
  constructor(store, sync, clock) {
    this.#store = store;
    this.#sync = sync;
    this.#clock = clock;
  }

  /** Begins to keep a copy of these tanks too, so that their entries come with the next exchange. @param {string[]} ids */
  async follow(ids) {
    for (const id of ids) await this.#store.copy.follow(id);
    this.#sync.nudge();
  }

  /**
   * @param {TankRow} row
   * @returns {Promise<{ today: Today | null, unsent: number, whole: boolean }>} whole: all of it is here
   */
  async lookAt(row) {
    // An engine of its own: the one of the desk holds the open tank.
    this.#aside ??= new Engine();
    const now = isoOf(this.#clock.now(), row.zone || Intl.DateTimeFormat().resolvedOptions().timeZone);
    const [waiting, cursor, today] = await Promise.all([this.#store.waiting(), this.#store.copy.cursor(row.id),
      this.#aside.ask("open", row.id, now).catch((/** @type {unknown} */ fault) => console.error("provender: a tank could not be reckoned:", fault))]);
    return { today: today ?? null, unsent: waiting.filter(({ tank }) => tank === row.id).length, whole: (cursor?.after ?? -1) >= row.head };
  }

  /** Lets go of what {@link lookAt} needed. */
  lookAway() {
    this.#aside?.end();
    this.#aside = null;
  }
}
