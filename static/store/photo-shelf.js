/** @import { Entry, KeptPhoto, Problem } from "../types.js" */
/** @import { Phone } from "./database.js" */

/** So many pictures stay here for times without a network; those that wait to be sent come on top. */
const MOST_KEPT = 150;

/** Pictures on this phone: those taken here, until they are sent and a while after, and those of others that were looked at. */
export class PhotoShelf {
  #phone;

  /** @param {Phone} phone */
  constructor(phone) {
    this.#phone = phone;
  }

  /** @param {string} id @returns {Promise<KeptPhoto | undefined>} */
  find(id) {
    return this.#phone.with((database) => database.get("photos", id));
  }

  /** The ids of all that wait to be sent, or of those of one tank. @param {string} [tank] @returns {Promise<string[]>} */
  waiting(tank) {
    return this.#phone.with((database) => database.getAllKeysFromIndex("photos", "waiting", tank));
  }

  /** Those of a tank whose entry has its place in the journal: only these may go. @param {string} tank @returns {Promise<string[]>} */
  async ready(tank) {
    const waiting = await this.waiting(tank);
    const entries = await this.#phone.with((database) => Promise.all(waiting.map((id) => database.get("entries", id))));
    return waiting.filter((_, place) => entries[place]?.seq !== undefined);
  }

  /** The server has it. @param {string} id */
  async sent(id) {
    await this.#change(id, ({ waits, problem, ...photo }) => ({ ...photo, seenAt: Date.now() }));
    await this.#makeRoom();
  }

  /** The server does not take it; it stays here, and says why. @param {string} id @param {Problem} problem */
  refused(id, problem) {
    return this.#change(id, ({ waits, ...photo }) => ({ ...photo, problem }));
  }

  /** It goes at once; the server is told as soon as it knows the entry. @param {string} id @param {string} tank */
  erase(id, tank) {
    return this.#phone.write(["photos"], (reach) =>
      reach("photos").put({ id, tank, bytes: new ArrayBuffer(0), erased: true, own: true, waits: tank }));
  }

  /** This phone has no more to do with it. @param {string} id */
  forget(id) {
    return this.#phone.write(["photos"], (reach) => reach("photos").delete(id));
  }

  /** Others have erased some: what is kept of them here goes too. One that still waits is turned away when it is sent. @param {Entry[]} entries that came */
  async erasedByOthers(entries) {
    const gone = entries.filter(({ kind, body }) => kind === "withdrawal" && body?.erased === true && typeof body.entry === "string");
    if (!gone.length) return;
    await this.#phone.write(["photos"], async (reach) => {
      for (const { tank, body } of gone) {
        const photo = /** @type {KeptPhoto | undefined} */ (await reach("photos").get(body.entry));
        if (photo && photo.tank === tank && !photo.waits && !photo.erased) await reach("photos").delete(photo.id);
      }
    });
  }

  /** One that was fetched, for the next time. @param {string} id @param {string} tank @param {ArrayBuffer} bytes */
  async fetched(id, tank, bytes) {
    await this.#phone.write(["photos"], async (reach) => {
      if (!(await reach("photos").get(id))) await reach("photos").put({ id, tank, bytes, own: false, seenAt: Date.now() });
    });
    await this.#makeRoom();
  }

  /** The server has these: the oldest go when there are many. */
  #makeRoom() {
    return this.#phone.write(["photos"], async (reach) => {
      const photos = reach("photos");
      const seen = await photos.index("seen").getAllKeys();
      for (const old of seen.slice(0, Math.max(0, seen.length - MOST_KEPT))) await photos.delete(old);
    });
  }

  /** The server was set back: what was taken here may be missing there, so it goes out once more. @param {string} tank */
  sendAgain(tank) {
    return this.#phone.write(["photos"], async (reach) => {
      for (const { seenAt, ...photo } of /** @type {KeptPhoto[]} */ (await reach("photos").index("ofTank").getAll(tank))) {
        if (photo.own && !photo.problem) await reach("photos").put({ ...photo, waits: tank });
      }
    });
  }

  /** Entries that bring a photo to a feeding, from the oldest of some feedings on. @param {string} tank @param {string} oldest @returns {Promise<Entry[]>} */
  ofFeedings(tank, oldest) {
    return this.#phone.with((database) =>
      database.getAllFromIndex("entries", "byFeeding", IDBKeyRange.bound([tank, oldest], [tank, []])));
  }

  /** Everything noted of one fish by its key. @param {string} tank @param {string} fish @returns {Promise<Entry[]>} */
  ofFish(tank, fish) {
    return this.#phone.with((database) => database.getAllFromIndex("entries", "byFish", [tank, fish]));
  }

  /** Every change to the shared records of a tank, of which a fish is one. @param {string} tank @param {string} fish @returns {Promise<Entry[]>} */
  changesOf(tank, fish) {
    return this.#phone.with((database) => database.getAllFromIndex("entries", "byRecord", [tank, "fish", fish]));
  }

  /**
   * What was done to some entries: corrected, taken back, brought back; in the order in which it counts, what has no place last.
   * @param {string} tank @param {string[]} ids
   * @returns {Promise<Entry[][]>}
   */
  async after(tank, ids) {
    const found = await this.#phone.with((database) =>
      Promise.all(ids.map((id) => database.getAllFromIndex("entries", "byEntry", [tank, id]))));
    const place = (/** @type {Entry} */ { seq }) => seq ?? Infinity;
    return found.map((entries) => entries.sort((a, b) => (place(a) === place(b) ? a.deviceSeq - b.deviceSeq : place(a) - place(b))));
  }

  /** @param {string} id @param {(photo: KeptPhoto) => KeptPhoto} change */
  #change(id, change) {
    return this.#phone.write(["photos"], async (reach) => {
      const photo = await reach("photos").get(id);
      if (photo) await reach("photos").put(change(photo));
    });
  }
}
