/** @import { Book, Entry, Tank, TankRow, Today } from "./types.js" */
import { isoAt, isoOf } from "./text/local-time.js";

/** The tank on the desk: who it is, its journal folded by the engine, and how it stands today. */
export class OpenTank {
  /** @type {Tank} */
  tank;
  /** @type {Today | null} */
  today = null;
  /** @type {Book | null} */
  #book = null;
  #filling = false;

  /** @param {TankRow} row */
  constructor(row) {
    this.tank = tankOf(row);
  }

  get zone() {
    return this.tank.zone || Intl.DateTimeFormat().resolvedOptions().timeZone;
  }

  /** The server may have a new name, zone or role for it. @param {TankRow} row */
  rename(row) {
    this.tank = tankOf(row);
  }

  /** Takes entries, in any order and again, without looking at the result yet. @param {Entry[]} entries */
  take(entries) {
    this.#book?.take(entries);
  }

  /**
   * Makes the fold anew from what the store holds. What is taken while the store is read goes into the new fold too;
   * until it is whole, the view before it stands.
   * @param {Book} book a fresh one
   * @param {Promise<Entry[]>} reading
   */
  async fill(book, reading) {
    this.#book = book;
    this.#filling = true;
    const entries = await reading;
    if (this.#book !== book) return;
    book.take(entries);
    this.#filling = false;
    this.fold();
  }

  fold() {
    if (this.#book && !this.#filling) this.today = this.#book.today(this.nowIso());
  }

  /** The present moment where the tank stands, such as 2026-11-25T08:10:00+01:00. */
  nowIso() {
    return isoOf(Date.now(), this.zone);
  }

  /** A minute of a local day where the tank stands. @param {number} day epoch day @param {number} minute */
  isoAt(day, minute) {
    return isoAt(day, minute, this.zone);
  }
}

/** @param {TankRow} row @returns {Tank} */
function tankOf({ id, name, role, zone }) {
  return { id, name, role, zone };
}
