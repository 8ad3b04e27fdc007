/** @import { Answer, Entry, Refusal, Waiting } from "../types.js" */
import { Phone } from "./database.js";
import { newId } from "./ids.js";
import { PhotoShelf } from "./photo-shelf.js";
import { ofTank, PulledCopy } from "./pulled-copy.js";

/** This phone is not who it was: its storage was cleared since the page began. */
export class StorageCleared extends Error {}

/** What the phone keeps: every entry it wrote or pulled, which of them wait to be sent, and which were refused. */
export class PhoneStore {
  #phone;

  /** @param {string} [name] of the database */
  constructor(name) {
    this.#phone = new Phone(name);
    this.copy = new PulledCopy(this.#phone);
    this.photos = new PhotoShelf(this.#phone);
  }

  /** This phone's own identity, minted once. */
  async device() {
    return (await this.setting("device")) ?? this.#phone.write(["settings"], async (reach) => {
      const known = await reach("settings").get("device");
      if (known) return known;
      const device = newId();
      await reach("settings").put(device, "device");
      return device;
    });
  }

  /** @param {string} key */
  setting(key) {
    return this.#phone.with((database) => database.get("settings", key));
  }

  /**
   * @param {string} key
   * @param {unknown} value undefined forgets it
   */
  keep(key, value) {
    return this.#phone.write(["settings"], (reach) =>
      value === undefined ? reach("settings").delete(key) : reach("settings").put(value, key));
  }

  /**
   * One tap: the entry, its place in the outbox, this phone's next number for the tank and its picture, all or nothing.
   * @param {Omit<Entry, "deviceSeq">} draft
   * @param {ArrayBuffer} [picture] what the entry shows
   * @returns {Promise<Entry>} once it is on disk
   */
  record(draft, picture) {
    return this.#phone.write(["entries", "outbox", "settings", ...(picture ? ["photos"] : [])], async (reach) => {
      if ((await reach("settings").get("device")) !== draft.device) throw new StorageCleared();
      const written = await reach("entries").get(draft.id);
      if (written) return written;
      const counter = `deviceSeq ${draft.tank}`;
      const deviceSeq = ((await reach("settings").get(counter)) ?? 0) + 1;
      const entry = { ...draft, deviceSeq };
      await Promise.all([
        reach("settings").put(deviceSeq, counter),
        reach("entries").add(entry),
        reach("outbox").add({ tank: entry.tank, deviceSeq, id: entry.id, recordedAt: entry.recordedAt }),
        picture && reach("photos").add({ id: entry.id, tank: entry.tank, bytes: picture, own: true, waits: entry.tank }),
      ]);
      return entry;
    });
  }

  /** @param {string} tank @returns {Promise<Entry[]>} */
  entriesOf(tank) {
    return this.#phone.with((database) => database.getAllFromIndex("entries", "byTank", ofTank(tank)));
  }

  /** @returns {Promise<Waiting[]>} everything not sent yet, each tank's in the order of the taps */
  waiting() {
    return this.#phone.with((database) => database.getAll("outbox"));
  }

  /** @returns {Promise<Entry[]>} the entries of {@link waiting} */
  allUnsent() {
    return this.#unsent();
  }

  /**
   * The oldest entries of a tank that wait to be sent.
   * @param {string} tank
   * @param {number} limit
   * @returns {Promise<Entry[]>}
   */
  unsent(tank, limit) {
    return this.#unsent(ofTank(tank), limit);
  }

  /**
   * @param {IDBKeyRange} [range]
   * @param {number} [limit]
   * @returns {Promise<Entry[]>}
   */
  #unsent(range, limit) {
    return this.#phone.with(async (database) => {
      const transaction = database.transaction(["outbox", "entries"]);
      const waiting = await transaction.objectStore("outbox").getAll(range, limit);
      return Promise.all(waiting.map((/** @type {Waiting} */ one) => transaction.objectStore("entries").get(one.id)));
    });
  }

  /**
   * Takes the server's word on pushed entries. Refused ones move, whole, to where the keeper sees them.
   * @param {Entry[]} pushed
   * @param {Answer[]} answers
   * @returns {Promise<{ placed: Entry[], refused: Refusal[] }>} placed: those that got their place in the journal
   */
  answered(pushed, answers) {
    return this.#phone.write(["entries", "outbox", "refused"], async (reach) => {
      const byId = new Map(answers.map((answer) => [answer.id, answer]));
      /** @type {{ placed: Entry[], refused: Refusal[] }} */
      const result = { placed: [], refused: [] };
      for (const entry of pushed) {
        const answer = byId.get(entry.id);
        if (!answer) continue;
        await reach("outbox").delete([entry.tank, entry.deviceSeq]);
        if (answer.outcome === "refused") {
          const refusal = { id: entry.id, entry, problem: answer.problem ?? null, refusedAt: new Date().toISOString() };
          await Promise.all([reach("refused").put(refusal), reach("entries").delete(entry.id)]);
          result.refused.push(refusal);
        } else {
          const placed = { ...entry, seq: answer.seq };
          await reach("entries").put(placed);
          result.placed.push(placed);
        }
      }
      return result;
    });
  }

  /** @returns {Promise<Refusal[]>} */
  refusals() {
    return this.#phone.with((database) => database.getAll("refused"));
  }

  /**
   * Puts a refused entry back in the queue as it was.
   * @param {string} id
   * @returns {Promise<Entry | null>}
   */
  tryAgain(id) {
    return this.#phone.write(["entries", "outbox", "refused"], async (reach) => {
      const refusal = await reach("refused").get(id);
      if (!refusal) return null;
      const { entry } = refusal;
      await Promise.all([
        reach("refused").delete(id),
        reach("entries").put(entry),
        reach("outbox").put({ tank: entry.tank, deviceSeq: entry.deviceSeq, id, recordedAt: entry.recordedAt }),
      ]);
      return entry;
    });
  }

  close() {
    return this.#phone.close();
  }
}
