/** @import { Book, Entry, Tank, TankRow, Today } from "./types.js" */
import { isoAt, isoOf } from "./text/local-time.js";

/** The tank on the desk: who it is, its journal folded by the engine, and how it stands today. */
export class OpenTank {
  /** @type {Tank} */
  tank;
  /** @type {Today | null} */
  today = null;
  /** Whether the last attempt to reckon the day failed, so that the view is older than the records. */
  trouble = false;
  /** @type {Book | null} */
  #book = null;
  #filling = false;
  #clock;

  /** @param {TankRow} row @param {{ now(): number }} clock */
  constructor(row, clock) {
    this.tank = tankOf(row);
    this.#clock = clock;
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
    if (this.#book) takeAll(this.#book, entries);
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
    takeAll(book, entries);
    this.#filling = false;
    this.fold();
  }

  /** Reckons the day anew. When that fails the records are none the worse: the view before stands, and says so. */
  fold() {
    if (!this.#book || this.#filling) return;
    try {
      this.today = this.#book.today(this.nowIso());
      this.trouble = false;
    } catch (fault) {
      this.trouble = true;
      console.error("provender: the day could not be reckoned:", fault);
    }
  }

  /** The water's side of the tank, as of now. */
  water() {
    if (!this.#book) throw new Error("the tank is still being read");
    return this.#book.water(this.nowIso());
  }

  /** @param {number} day epoch day @returns {Today} */
  endOf(day) {
    if (!this.#book) throw new Error("the tank is still being read");
    return this.#book.today(this.isoAt(day, 1439));
  }

  /** @param {string} feeding */
  shares(feeding) {
    return this.#book?.shares(this.nowIso(), feeding) ?? [];
  }

  /** @param {string} entry */
  history(entry) {
    return this.#book?.history(entry) ?? [];
  }

  /** The present moment where the tank stands, such as 2026-11-25T08:10:00+01:00. */
  nowIso() {
    return isoOf(this.#clock.now(), this.zone);
  }

  /** A minute of a local day where the tank stands. @param {number} day epoch day @param {number} minute */
  isoAt(day, minute) {
    return isoAt(day, minute, this.zone);
  }
}

/** @param {TankRow} row @returns {Tank} */
function tankOf({ id, name, role, zone, keepers = [] }) {
  return { id, name, role, zone, keepers };
}

/**
 * One entry that cannot be read must not hide the others.
 * @param {Book} book
 * @param {Entry[]} entries
 */
function takeAll(book, entries) {
  try {
    book.take(entries);
  } catch {
    for (const entry of entries) takeOne(book, entry);
  }
}

/** @param {Book} book @param {Entry} entry */
function takeOne(book, entry) {
  try {
    book.take([entry]);
  } catch (fault) {
    console.error("provender: passed over in the figures, kept in the journal:", entry.id, fault);
  }
}
