/** @import { Cleared } from "../types.js" */
/** @import { PhoneStore } from "./phone-store.js" */

const NOTE = "provender.phone";

/**
 * Who this phone is, and whether its storage is still the one it was. Systems and people clear away what pages keep, without
 * a word to the page; a note outside the database tells of it afterwards, so that it is reported and not hidden.
 */
export class ThisPhone {
  device = "";
  #store;

  /** @param {PhoneStore} store */
  constructor(store) {
    this.#store = store;
  }

  /** @returns {Promise<boolean>} whether the storage was cleared since the last look */
  async look() {
    const device = await this.#store.device();
    const note = noted();
    const cleared = this.device ? this.device !== device : note !== null && note.device !== device;
    if (cleared) {
      const before = await this.cleared();
      /** @type {Cleared} */
      const report = { at: new Date().toISOString(), unsent: (note?.unsent ?? 0) + (before?.unsent ?? 0) };
      await this.#store.keep("cleared", report);
    }
    this.device = device;
    write(device, cleared ? 0 : note?.unsent ?? 0);
    return cleared;
  }

  /** How many records would be lost now with the storage; of storage that was cleared nothing is noted. @param {number} unsent */
  async note(unsent) {
    if ((await this.#store.setting("device")) !== this.device) return;
    write(this.device, unsent);
  }

  /** What is known of a clearing nobody has acknowledged yet. @returns {Promise<Cleared | undefined>} */
  cleared() {
    return this.#store.setting("cleared");
  }

  acknowledge() {
    return this.#store.keep("cleared", undefined);
  }
}

/** @param {string} device @param {number} unsent */
function write(device, unsent) {
  localStorage.setItem(NOTE, JSON.stringify({ device, unsent }));
}

/** @returns {{ device: string, unsent: number } | null} */
function noted() {
  try {
    return JSON.parse(localStorage.getItem(NOTE) ?? "null");
  } catch {
    return null;
  }
}
