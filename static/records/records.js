/** @import { Answer, Entry, PushAnswers } from "../types.js" */
/** @import { PhoneStore } from "../store/phone-store.js" */
/** @import { Sync } from "../sync/sync.js" */
import { ThisPhone } from "../store/this-phone.js";
import { batchOf } from "../sync/batch.js";
import { postJson } from "../sync/http.js";
import { PhoneClock } from "../sync/phone-clock.js";
import { shifted, tappedToday } from "./tapped-times.js";

/** The longest a record should have to wait before somebody is told. */
const TOO_LONG_MILLIS = 24 * 3600_000;

/** Where this phone's records are, whether its copy, its clock and its storage are sound, and what waits for a person. */
export class Records {
  #store;
  #sync;
  phone;
  clock;

  /** @param {PhoneStore} store @param {Sync} sync */
  constructor(store, sync) {
    this.#store = store;
    this.#sync = sync;
    this.phone = new ThisPhone(store);
    this.clock = new PhoneClock(store);
  }

  /** Whether something has been waiting for a day. */
  get waitsTooLong() {
    const { oldestUnsent } = this.#sync.status;
    return oldestUnsent !== null && Date.now() - Date.parse(oldestUnsent) > TOO_LONG_MILLIS;
  }

  /** What the server would not take, with its reasons; nothing of it is lost. */
  refusals() {
    return this.#store.refusals();
  }

  /** @param {string} id of a refused entry @returns {Promise<string | null>} the tank it belongs to */
  async tryAgain(id) {
    const entry = await this.#store.tryAgain(id);
    if (entry) await this.#sync.wrote({ type: "entries", tank: entry.tank, entries: [entry] });
    return entry?.tank ?? null;
  }

  /** Everything that has not reached the server, as a file to save elsewhere. @returns {Promise<Blob>} */
  async unsentFile() {
    const [entries, refused] = await Promise.all([this.#store.allUnsent(), this.#store.refusals()]);
    return new Blob([JSON.stringify({ entries, refused }, null, 2)], { type: "application/json" });
  }

  /**
   * Hands the records of such a file to the server, from whichever phone it came. They are known by their id: what has
   * arrived already is not doubled, and doing it again changes nothing.
   * @param {string} text
   * @returns {Promise<{ accepted: number, known: number, refused: Answer[] }>}
   */
  async bringFile(text) {
    const result = { accepted: 0, known: 0, refused: /** @type {Answer[]} */ ([]) };
    for (const [tank, entries] of byTank(entriesOf(text))) {
      for (let left = entries; left.length > 0; ) {
        const batch = batchOf(left);
        left = left.slice(batch.length);
        /** @type {PushAnswers} */
        const { answers } = await postJson(`/api/v1/tanks/${encodeURIComponent(tank)}/entries`, { entries: batch });
        for (const answer of answers) {
          if (answer.outcome === "refused") result.refused.push(answer);
          else if (answer.outcome === "duplicate") result.known++;
          else result.accepted++;
        }
      }
    }
    this.#sync.nudge();
    return result;
  }

  /** How this phone's copy of a journal was last found beside the server's. @param {string} tank */
  copyCheck(tank) {
    return this.#store.copy.lastCheck(tank);
  }

  /** Holds the copy against the server's now; what differs is fetched anew. @param {string} tank */
  async checkCopy(tank) {
    await this.#store.copy.checked(tank, undefined);
    this.#sync.nudge();
  }

  /** What was tapped here with a clock that is off, and the time each would have by the server's. @param {string} tank */
  async wronglyTimed(tank) {
    const { offset, followsSince, isOff } = this.clock;
    if (!isOff || offset === null) return [];
    const entries = await this.#store.entriesOf(tank);
    return tappedToday(entries, this.phone.device, { now: Date.now(), followsSince })
      .map((entry) => ({ id: entry.id, happenedAt: shifted(entry, offset) }));
  }

  /** Whether the browser has promised to keep this page's storage, and how much is used; null where it does not say. */
  async storage() {
    const { storage } = navigator;
    if (!storage?.persisted) return null;
    const [lasting, estimate] = await Promise.all([storage.persisted(), storage.estimate?.()]);
    return { lasting, used: estimate?.usage ?? null, room: estimate?.quota ?? null };
  }

  /** @returns {Promise<boolean>} whether the browser promises to keep it */
  async askToKeep() {
    return (await navigator.storage?.persist?.()) ?? false;
  }
}

/** @param {string} text @returns {Entry[]} */
function entriesOf(text) {
  const file = JSON.parse(text);
  const refused = (file.refused ?? []).map((/** @type {{ entry: Entry }} */ { entry }) => entry);
  const entries = [...(file.entries ?? []), ...refused];
  if (entries.length === 0 || entries.some((entry) => typeof entry?.id !== "string" || typeof entry.tank !== "string")) {
    throw new TypeError("not a file of unsent records");
  }
  return entries;
}

/** @param {Entry[]} entries @returns {Map<string, Entry[]>} */
function byTank(entries) {
  const tanks = new Map();
  for (const entry of entries) tanks.set(entry.tank, [...(tanks.get(entry.tank) ?? []), entry]);
  return tanks;
}
