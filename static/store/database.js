/** @import { Database, Reached, Transaction } from "../types.js" */
import { openDB } from "idb";

const NAME = "provender";
const VERSION = 4;

/** The phone's database, opened on demand and opened again when the system has closed it. */
export class Phone {
  /** @type {Promise<Database> | null} */
  #opening = null;
  #name;

  /** @param {string} [name] */
  constructor(name = NAME) {
    this.#name = name;
  }

  /**
   * Does one piece of work with an open database. Systems close handles of sleeping pages without a word; at the first
   * sign of it the work is done once more with a fresh handle, so work must bear being done twice.
   * @template T
   * @param {(database: Database) => Promise<T>} work
   * @returns {Promise<T>}
   */
  async with(work) {
    try {
      return await work(await this.#open());
    } catch (fault) {
      if (!isLostHandle(fault)) throw fault;
      this.#opening = null;
      return work(await this.#open());
    }
  }

  /**
   * Writes in one transaction and resolves only when it is safely on disk.
   * @template T
   * @param {string[]} stores
   * @param {(reach: Reached) => Promise<T>} change
   * @returns {Promise<T>}
   */
  write(stores, change) {
    return this.#write(stores, "strict", change);
  }

  /**
   * Writes in one transaction what the server can give again: a power cut may take it back, whole, so nobody waits for the disk.
   * @template T
   * @param {string[]} stores
   * @param {(reach: Reached) => Promise<T>} change
   * @returns {Promise<T>}
   */
  writeCopy(stores, change) {
    return this.#write(stores, "relaxed", change);
  }

  /**
   * @template T
   * @param {string[]} stores
   * @param {"strict" | "relaxed"} durability
   * @param {(reach: Reached) => Promise<T>} change
   * @returns {Promise<T>}
   */
  #write(stores, durability, change) {
    return this.with(async (database) => {
      const transaction = database.transaction(stores, "readwrite", { durability });
      const done = transaction.done;
      // The change's own fault is told first; without this line the abort that follows would count as unhandled.
      done.catch(() => {});
      try {
        const result = await change((name) => transaction.objectStore(name));
        await done;
        return result;
      } catch (fault) {
        abort(transaction);
        throw fault;
      }
    });
  }

  async close() {
    const opening = this.#opening;
    this.#opening = null;
    (await opening)?.close();
  }

  #open() {
    this.#opening ??= this.#opened(VERSION).catch((/** @type {unknown} */ fault) => {
      // A newer page has been here. Its steps only added to what is known here, so this one goes on with what there is.
      if (fault instanceof DOMException && fault.name === "VersionError") return this.#opened();
      throw fault;
    }).catch((/** @type {unknown} */ fault) => {
      this.#opening = null;
      throw fault;
    });
    return this.#opening;
  }

  /** @param {number} [version] whichever there is when not given @returns {Promise<Database>} */
  #opened(version) {
    return openDB(this.#name, version, {
      upgrade,
      // A newer page in another tab waits for us; holding on would lock it out.
      blocking: () => this.close(),
      terminated: () => {
        this.#opening = null;
      },
    });
  }
}

/**
 * Steps are only ever added: what a phone has kept stays readable for every later version.
 * @param {Database} database
 * @param {number} oldVersion
 * @param {number | null} newVersion
 * @param {Transaction} transaction
 */
function upgrade(database, oldVersion, newVersion, transaction) {
  if (oldVersion < 1) {
    const entries = database.createObjectStore("entries", { keyPath: "id" });
    entries.createIndex("byTank", ["tank", "happenedAt"]);
    database.createObjectStore("outbox", { keyPath: ["tank", "deviceSeq"] });
    database.createObjectStore("cursors", { keyPath: "tank" });
    database.createObjectStore("refused", { keyPath: "id" });
    database.createObjectStore("settings");
  }
  if (oldVersion < 2) transaction.objectStore("entries").createIndex("bySeq", ["tank", "seq"]);
  if (oldVersion < 3) {
    // Only entries that have these fields are in these indexes, which is few of them.
    const entries = transaction.objectStore("entries");
    entries.createIndex("byFish", ["tank", "body.fish"]);
    entries.createIndex("byRecord", ["tank", "body.record", "body.key"]);
    entries.createIndex("byFeeding", ["tank", "body.feeding"]);
    entries.createIndex("byEntry", ["tank", "body.entry"]);
    const photos = database.createObjectStore("photos", { keyPath: "id" });
    photos.createIndex("waiting", "waits");
    photos.createIndex("seen", "seenAt");
    photos.createIndex("ofTank", "tank");
  }
  if (oldVersion < 4) transaction.objectStore("entries").createIndex("byKind", ["tank", "kind", "happenedAt"]);
}

/** @param {{ abort(): void }} transaction */
function abort(transaction) {
  try {
    transaction.abort();
  } catch {
    // It has ended already.
  }
}

/** @param {unknown} fault */
function isLostHandle(fault) {
  return fault instanceof DOMException && ["InvalidStateError", "UnknownError", "AbortError"].includes(fault.name);
}
