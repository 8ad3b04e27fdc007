/** @import { CopyCheck, Cursor, Entry, Page, Reached } from "../types.js" */
/** @import { Phone } from "./database.js" */
import { unwrap } from "idb";

/** This phone's copy of the journals in their order: what the server can give again at any time. */
export class PulledCopy {
  #phone;

  /** @param {Phone} phone */
  constructor(phone) {
    this.#phone = phone;
  }

  /** @param {string} tank @returns {Promise<Cursor | undefined>} undefined: this phone has never opened the tank */
  cursor(tank) {
    return this.#phone.with((database) => database.get("cursors", tank));
  }

  /** Begins to follow a tank; one that is followed already is left as it stands. @param {string} tank */
  follow(tank) {
    return this.#phone.write(["cursors"], async (reach) => {
      const known = await reach("cursors").get(tank);
      if (!known) await reach("cursors").put({ tank, after: 0, epoch: null });
    });
  }

  /**
   * A pulled page and the cursor behind it, together.
   * @param {string} tank
   * @param {Page} page
   */
  pulled(tank, page) {
    return this.#phone.writeCopy(["entries", "cursors"], async (reach) => {
      const before = /** @type {Cursor | undefined} */ (await reach("cursors").get(tank));
      const after = page.entries.reduce((high, entry) => Math.max(high, entry.seq ?? 0), before?.after ?? 0);
      // The transaction waits for each of them; a promise for each would cost as much as the writing.
      const entries = unwrap(reach("entries"));
      for (const entry of page.entries) entries.put(entry);
      await reach("cursors").put({ tank, after, epoch: page.epoch });
    });
  }

  /**
   * The server was set back to a backup: forget the places it gave, queue again what this phone wrote, pull from the start.
   * @param {string} tank
   * @param {string} device
   * @param {Cursor["epoch"]} epoch
   */
  restart(tank, device, epoch) {
    return this.#phone.write(["entries", "outbox", "cursors"], async (reach) => {
      const held = /** @type {Entry[]} */ (await reach("entries").index("byTank").getAll(ofTank(tank)));
      for (const entry of held) await takeBack(reach, entry, device);
      await reach("cursors").put({ tank, after: 0, epoch });
    });
  }

  /**
   * The entries in some places, in order.
   * @param {string} tank @param {number} from @param {number} to
   * @returns {Promise<Entry[]>}
   */
  between(tank, from, to) {
    return this.#phone.with((database) => database.getAllFromIndex("entries", "bySeq", placesOf(tank, from, to)));
  }

  /**
   * Puts the server's entries of some places over this phone's. What waits to be sent is not touched, and what the server
   * does not know is not thrown away: it only loses its place, and goes out again when it was written here.
   * @param {string} tank @param {number} from @param {number} to
   * @param {Entry[]} entries all that the server holds there
   * @param {string} device this phone
   */
  mend(tank, from, to, entries, device) {
    return this.#phone.write(["entries", "outbox"], async (reach) => {
      const waiting = new Set((await reach("outbox").getAll(ofTank(tank))).map(({ id }) => id));
      const known = new Set(entries.map(({ id }) => id));
      const held = /** @type {Entry[]} */ (await reach("entries").index("bySeq").getAll(placesOf(tank, from, to)));
      for (const entry of held) if (!known.has(entry.id)) await takeBack(reach, entry, device);
      for (const entry of entries) if (!waiting.has(entry.id)) await reach("entries").put(entry);
    });
  }

  /** When this phone's copy of a journal was last held against the server's. @param {string} tank @returns {Promise<CopyCheck | undefined>} */
  lastCheck(tank) {
    return this.#phone.with((database) => database.get("settings", `checked ${tank}`));
  }

  /** @param {string} tank @param {CopyCheck | undefined} check undefined: let it be done again soon */
  checked(tank, check) {
    const key = `checked ${tank}`;
    return this.#phone.write(["settings"], (reach) => (check === undefined ? reach("settings").delete(key) : reach("settings").put(check, key)));
  }
}

/**
 * An entry the server has not (or not any more): it loses its place, and waits to be sent when this phone wrote it.
 * @param {Reached} reach @param {Entry} entry @param {string} device
 */
export async function takeBack(reach, entry, device) {
  const { seq, receivedAt, ...bare } = entry;
  await reach("entries").put(bare);
  if (entry.device !== device) return;
  await reach("outbox").put({ tank: entry.tank, deviceSeq: entry.deviceSeq, id: entry.id, recordedAt: entry.recordedAt });
}

/** Every key that begins with the tank: an array sorts after all texts and numbers. @param {string} tank */
export function ofTank(tank) {
  return IDBKeyRange.bound([tank], [tank, []]);
}

/** @param {string} tank @param {number} from @param {number} to */
function placesOf(tank, from, to) {
  return IDBKeyRange.bound([tank, from], [tank, to]);
}
