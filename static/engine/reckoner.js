/** @import { Bench, Book, Entry, Today } from "../types.js" */
/** @import { LookBack } from "../store/look-back.js" */
import { glanceOf } from "./glance.js";
import { sumsOf } from "./sums.js";

const DAY_MILLIS = 86_400_000;
const KEEP_AFTER_MILLIS = 800;

/**
 * One tank at a time, folded from what the phone holds of its journal: the feedings as far back as the engine looks from the
 * day that is asked about, and everything else. Questions are answered one after the other.
 */
export class Reckoner {
  #bench;
  #store;
  #lookBackDays;
  #tank = "";
  /** @type {Book | null} */
  #book = null;
  /** The first day whose feedings are in the book. */
  #since = "";
  /** When the earliest feeding in the book happened: with it the log is known to have begun. */
  #earliest = "~";
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #keeping;

  /** @param {Bench} bench @param {number} lookBackDays @param {LookBack} store */
  constructor(bench, lookBackDays, store) {
    this.#bench = bench;
    this.#lookBackDays = lookBackDays;
    this.#store = store;
  }

  /** Folds a tank anew from the store. @param {string} tank @param {string} now @returns {Promise<Today>} */
  async open(tank, now) {
    this.#tank = tank;
    this.#book = this.#bench.tank();
    this.#since = this.#firstDay(now);
    this.#earliest = "~";
    const [changes, first, late] = await Promise.all([
      this.#store.changes(tank), this.#store.firstFeedings(tank), this.#store.feedings(tank, this.#since)]);
    await this.take(tank, [...first, ...late, ...changes]);
    return this.today(tank, now);
  }

  /** Entries just written or fetched, already in the store. @param {string} tank @param {Entry[]} entries */
  async take(tank, entries) {
    if (tank !== this.#tank) return;
    const wanted = entries.filter((entry) => this.#matters(entry));
    const moved = wanted.filter(({ kind, body }) => kind === "amendment" && body.set?.happenedAt >= this.#since);
    const brought = await Promise.all(moved.map(({ body }) => this.#store.entry(body.entry)));
    takeAll(this.#of(tank), [...wanted, ...brought.filter((entry) => entry !== undefined)]);
  }

  /** @param {string} tank @param {string} now */
  today(tank, now) {
    const today = this.#of(tank).today(now);
    clearTimeout(this.#keeping);
    this.#keeping = setTimeout(() => this.#store.keepGlance(tank, glanceOf(today)), KEEP_AFTER_MILLIS);
    return today;
  }

  /** How the tank stood at the end of a day. @param {string} tank @param {string} then its last minute */
  async endOf(tank, then) {
    const since = this.#firstDay(then);
    if (since < this.#since) {
      const earlier = await this.#store.feedings(tank, since, this.#since);
      this.#since = since;
      takeAll(this.#of(tank), earlier);
    }
    return this.#of(tank).today(then);
  }

  /** What of it can be held against another day. @param {string} tank @param {string} then its last minute */
  async sumsTo(tank, then) {
    return sumsOf(await this.endOf(tank, then));
  }

  /** @param {string} tank @param {string} now */
  water(tank, now) {
    return this.#of(tank).water(now);
  }

  /** @param {string} tank @param {string} now @param {string} feeding */
  shares(tank, now, feeding) {
    return this.#of(tank).shares(now, feeding);
  }

  /** @param {string} tank @param {string} id of any entry, however old */
  async history(tank, id) {
    const entry = await this.#store.entry(id);
    if (entry) takeAll(this.#of(tank), [entry]);
    return this.#of(tank).history(id);
  }

  /** @param {string} name @param {object} input */
  calc(name, input) {
    return this.#bench.calc(name, input);
  }

  /** @param {string} tank @returns {Book} */
  #of(tank) {
    if (!this.#book || tank !== this.#tank) throw new Error(`another tank than ${tank} is open`);
    return this.#book;
  }

  /** An old feeding changes nothing, unless it is the one with which the log began. @param {Entry} entry */
  #matters({ kind, happenedAt }) {
    if (kind !== "feeding" || happenedAt >= this.#since) return true;
    if (happenedAt >= this.#earliest) return false;
    this.#earliest = happenedAt;
    return true;
  }

  /** @param {string} now local time with offset */
  #firstDay(now) {
    return new Date(Date.parse(now.slice(0, 10)) - this.#lookBackDays * DAY_MILLIS).toISOString().slice(0, 10);
  }
}

/** One entry that cannot be read must not hide the others. @param {Book} book @param {Entry[]} entries */
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
