/** @import { Entry, Glance, Share, Sums, Tank, TankRow, Today, Water } from "../types.js" */
/** @import { Engine } from "../engine/index.js" */
import { glanceAt } from "../engine/glance.js";
import { isoAt, isoOf } from "../text/local-time.js";

/** The tank on the desk: who it is, its journal folded by the engine, and how it stands today. */
export class OpenTank {
  /** @type {Tank} */
  tank;
  /** @type {Today | null} */
  today = null;
  /** What a feeding can be tapped in from until the day is reckoned. @type {Glance | null} */
  glance = null;
  /** Whether the last attempt to reckon the day failed, so that the view is older than the records. */
  trouble = false;
  #engine;
  #changed;
  /** @type {Promise<void> | null} */
  #folding = null;
  /** What is still to be asked for: the whole fold from the store, or the day alone. @type {"open" | "today" | null} */
  #wanted = null;
  /** What was asked about this state of the tank: a page that comes back has its answers at once. @type {Map<string, Promise<any>>} */
  #asked = new Map();
  #clock;

  /** @param {TankRow} row @param {Engine} engine @param {{ now(): number }} clock @param {() => void} changed called when the day was reckoned anew */
  constructor(row, engine, clock, changed) {
    this.tank = tankOf(row);
    this.#engine = engine;
    this.#clock = clock;
    this.#changed = changed;
  }

  get zone() {
    return this.tank.zone || Intl.DateTimeFormat().resolvedOptions().timeZone;
  }

  /** The server may have a new name, zone or role for it. @param {TankRow} row */
  rename(row) {
    this.tank = tankOf(row);
  }

  /** As it was last seen on this phone. @param {Glance | undefined} kept */
  glimpse(kept) {
    this.glance = kept ? glanceAt(kept, this.nowIso()) : null;
  }

  /** Takes entries, in any order and again, without looking at the result yet. @param {Entry[]} entries */
  take(entries) {
    if (this.#wanted !== "open") this.#engine.ask("take", this.tank.id, entries).catch((fault) => this.#failed(fault));
  }

  /**
   * Makes the fold anew from what the store holds; until it is whole, the view before it stands.
   * @param {Promise<void>} [ready] what comes before: nothing, or that what was seen last is on screen
   */
  async fill(ready) {
    this.#wanted = "open";
    await ready;
    return this.#fold();
  }

  /** Reckons the day anew; when asked while it is being reckoned, once more afterwards. */
  fold() {
    this.#wanted ??= "today";
    return this.#fold();
  }

  #fold() {
    this.#folding ??= this.#folds().finally(() => (this.#folding = null));
    return this.#folding;
  }

  async #folds() {
    while (this.#wanted) {
      const ask = this.#wanted;
      this.#wanted = null;
      try {
        this.today = await this.#engine.ask(ask, this.tank.id, this.nowIso());
        this.#asked.clear();
        this.trouble = false;
      } catch (fault) {
        this.#failed(fault);
      }
      this.#changed();
    }
  }

  /** The records are none the worse: the view before stands, and says so. @param {unknown} fault */
  #failed(fault) {
    this.trouble = true;
    console.error("provender: the day could not be reckoned:", fault);
  }

  /** The water's side of the tank, as of now. @returns {Promise<Water>} */
  water() {
    return this.#once("water", this.nowIso());
  }

  /** How it stood at the end of a day that has passed. @param {number} day epoch day @returns {Promise<Today>} */
  endOf(day) {
    return this.#once("endOf", this.isoAt(day, 1439));
  }

  /** What it and each fish were due and got in the weeks to the end of a day. @param {number} day epoch day @returns {Promise<Sums>} */
  sumsTo(day) {
    return this.#once("sumsTo", this.isoAt(day, 1439));
  }

  /** Who is reckoned to have got how much of one of the last days' feedings. @param {string} feeding its id @returns {Promise<Share[]>} */
  shares(feeding) {
    return this.#engine.ask("shares", this.tank.id, this.nowIso(), feeding);
  }

  /** @param {"water" | "endOf" | "sumsTo"} ask @param {string} then */
  #once(ask, then) {
    const name = ask === "water" ? ask : `${ask} ${then}`;
    const known = this.#asked.get(name);
    if (known) return known;
    const answer = this.#engine.ask(ask, this.tank.id, then);
    this.#asked.set(name, answer);
    answer.catch(() => this.#asked.delete(name));
    return answer;
  }

  /** @param {string} entry @returns {Promise<Entry[]>} it and every later one that changed it, in the order in which they count */
  history(entry) {
    return this.#engine.ask("history", this.tank.id, entry);
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
