/** @import { ClockNote } from "../types.js" */
/** @import { PhoneStore } from "../store/phone-store.js" */

/** A network may delay an answer by seconds; whoever logs by the minute is not misled by less than this. */
const LARGE_MILLIS = 2 * 60_000;
const WORTH_KEEPING_MILLIS = 5_000;

/**
 * By how much the server's clock is before this phone's, measured at each exchange. No entry is refused for its clock; but
 * who sees that it is wrong may have new records carry the server's time.
 */
export class PhoneClock {
  #store;
  /** Server minus phone; null: never measured. @type {number | null} */
  offset = null;
  /** Since when, by the phone's clock, records carry the server's time. @type {string | null} */
  followsSince = null;

  /** @param {PhoneStore} store */
  constructor(store) {
    this.#store = store;
  }

  async start() {
    /** @type {ClockNote | undefined} */
    const note = await this.#store.setting("clock");
    Object.assign(this, note ?? {});
  }

  /** @param {number} offset */
  async measured(offset) {
    const moved = Math.abs(offset - (this.offset ?? Infinity)) > WORTH_KEEPING_MILLIS;
    this.offset = offset;
    if (moved) await this.#keep();
  }

  /** Whether the two differ by more than a network's delays. */
  get isOff() {
    return this.offset !== null && Math.abs(this.offset) > LARGE_MILLIS;
  }

  /** The moment that new records carry. */
  now() {
    return Date.now() + (this.followsSince && this.isOff ? /** @type {number} */ (this.offset) : 0);
  }

  /** @param {boolean} follows whether new records are to carry the server's time while the clocks differ */
  follow(follows) {
    this.followsSince = follows ? new Date().toISOString() : null;
    return this.#keep();
  }

  #keep() {
    return this.#store.keep("clock", { offset: this.offset, followsSince: this.followsSince });
  }
}

/**
 * @param {number} asked the phone's clock when the question left
 * @param {number} answered and when the answer was there
 * @param {string} serverTime
 */
export function offsetOf(asked, answered, serverTime) {
  return Date.parse(serverTime) - (asked + answered) / 2;
}
