/** @import { Cleared, Entry, Food, ReferenceMaps, TankRow } from "../types.js" */
/** @import { Engine } from "../engine/index.js" */
/** @import { PhoneStore } from "../store/phone-store.js" */
/** @import { Sync } from "../sync/sync.js" */
import { Records } from "../records/records.js";
import { Door } from "./door.js";
import { KnownFoods } from "./known-foods.js";
import { Membership } from "./membership.js";
import { OpenTank } from "./open-tank.js";
import { OtherTanks } from "./other-tanks.js";
import { Recorder } from "./recorder.js";
import { Rhythm, painted } from "./rhythm.js";

const A_PAGE = 500;

/**
 * The open tank: entries in, how things stand today out.
 * @fires changed - anything shown may be different now
 * @fires came - entries of a tank, open or not; its id
 * @fires update-ready - a new version waits for the keeper's word
 */
export class Desk extends EventTarget {
  /** The published tables. @type {ReferenceMaps} */
  reference = { foods: new Map(), supplements: new Map(), species: new Map(), guilds: new Map(), sources: new Map(), families: new Map(), constants: new Map() };
  /** Who is here, and what they may see. */
  membership;
  /** Where they come in and leave. */
  door;
  /** Where the records are, and what of them waits for a person. */
  records;
  /** How the tanks stand that are not open. */
  otherTanks;
  /** Storage that was cleared away under this page, until somebody has read of it. @type {Cleared | null} */
  cleared = null;
  #store;
  #sync;
  #engine;
  /** @type {OpenTank | null} */
  #open = null;
  /** @type {import("../photo/album.js").Album | undefined} */
  #album;
  #recorder;
  #foods = new KnownFoods();
  #rhythm = new Rhythm(() => this.#open?.fold());
  /** The last place in the open tank's journal that this phone holds. */
  #seen = 0;
  /** @type {(() => void) | null} */
  #takeOver = null;

  /**
   * @param {PhoneStore} store
   * @param {Sync} sync
   * @param {Engine} engine
   */
  constructor(store, sync, engine) {
    super();
    this.#store = store;
    this.#sync = sync;
    this.#engine = engine;
    this.membership = new Membership(store);
    this.door = new Door(this, this.membership, sync);
    this.records = new Records(store, sync);
    this.otherTanks = new OtherTanks(store, sync, this.records.clock);
    this.#recorder = new Recorder(store, this.records.phone, () => this.#settleAgain());
  }

  /** Takes up what the phone holds; needs no network. @param {Promise<ReferenceMaps>} tables on their way */
  async start(tables) {
    const { phone, clock } = this.records;
    const [cleared, last] = await Promise.all([phone.look().then(() => phone.cleared()), this.#store.setting("openTank"), this.membership.start(), clock.start()]);
    this.cleared = cleared ?? null;
    this.#listen();
    if (this.keeper && this.tanks.some(({ id }) => id === last)) await this.open(last);
    // Who is only signing in needs none of them, and does not wait; should they not come now, they are asked for again afterwards.
    if (this.keeper) this.reference = await tables;
    else tables.then((maps) => (this.reference = maps), (fault) => console.error("provender: the tables did not come:", fault));
    this.#rhythm.start();
  }

  get keeper() {
    return this.membership.keeper;
  }

  get tanks() {
    return this.membership.tanks;
  }

  get households() {
    return this.membership.households;
  }

  get tank() {
    return this.#open?.tank ?? null;
  }

  /** The open tank, for what is asked of it only now and then. */
  get opened() {
    if (!this.#open) throw new Error("no tank is open");
    return this.#open;
  }

  get today() {
    return this.#open?.today ?? null;
  }

  /** What a feeding can be tapped in from: today, or what this phone saw last until that is reckoned. */
  get glance() {
    return this.today ?? this.#open?.glance ?? null;
  }

  /** The published foods and this tank's own, by key. @returns {Map<string, Food>} */
  get foods() {
    return this.#foods.of(this.reference.foods, this.glance?.ownFoods ?? []);
  }

  /** Whether {@link today} is older than the records, because the day could not be reckoned. */
  get trouble() {
    return this.#open?.trouble ?? false;
  }

  /** How much of the open tank's journal is here, while a good part of it is still on its way; else null. */
  get fetching() {
    const head = this.tanks.find(({ id }) => id === this.tank?.id)?.head ?? 0;
    return head - this.#seen > A_PAGE ? { here: this.#seen, all: head } : null;
  }

  get status() {
    return this.#sync.status;
  }

  /** Whether this keeper may write in the open tank's journal. */
  get mayRecord() {
    return this.tank !== null && this.tank.role !== "guest";
  }

  /** No tank is on the desk until another is opened. */
  layAside() {
    this.#open = null;
  }

  /** The same, and the next start begins without one too. */
  async close() {
    this.layAside();
    this.#sync.watch(null);
    await this.#store.keep("openTank", undefined);
  }

  /** @param {string} id of a tank in the list */
  async open(id) {
    const row = this.tanks.find((tank) => tank.id === id);
    if (!row) throw new Error(`no tank ${id} among those of ${this.keeper?.name}`);
    const opened = new OpenTank(row, this.#engine, this.records.clock, () => this.changed());
    const [glance, cursor, last] = await Promise.all([this.#store.setting(`glance ${id}`), this.#store.copy.cursor(id), this.#store.setting("openTank")]);
    opened.glimpse(glance);
    this.#open = opened;
    this.#seen = cursor?.after ?? 0;
    opened.fill(opened.glance ? painted() : undefined);
    this.changed();
    // Writing waits for the disk: what stands there already is left as it is.
    if (!cursor) await this.#store.copy.follow(id);
    if (last !== id) await this.#store.keep("openTank", id);
    this.#sync.watch(id);
    this.#sync.nudge();
  }

  /**
   * Writes an entry on this phone. Resolves when it is safely saved; the figures follow, and sending comes after.
   * @param {string} kind
   * @param {Record<string, unknown>} body
   * @param {{ happenedAt?: string, picture?: ArrayBuffer }} [more] happenedAt: local time with offset; now when not given
   * @returns {Promise<Entry>}
   */
  async record(kind, body, more = {}) {
    const { keeper, opened } = this;
    if (!keeper) throw new Error("nobody has signed in on this phone");
    const entry = await this.#recorder.write(opened, keeper, { kind, body, ...more });
    opened.take([entry]);
    this.#rhythm.afterPaint();
    // Counting and sending are the network's business: a tap is answered first.
    painted().then(() => this.#sync.wrote({ type: "entries", tank: entry.tank, entries: [entry] }));
    return entry;
  }

  /** @param {string} id of an entry @param {boolean} withdrawn false brings it back */
  withdraw(id, withdrawn) {
    return this.record("withdrawal", { entry: id, withdrawn });
  }

  /** @param {string} id of an entry @param {Record<string, unknown>} set such as {"body.leftoverGrams": 3} */
  amend(id, set) {
    return this.record("amendment", { entry: id, set });
  }

  /** @param {string} id of a refused entry */
  async tryAgain(id) {
    const tank = await this.records.tryAgain(id);
    if (tank) this.#rereadIfOpen(tank);
  }

  /** Somebody has read that the storage was cleared. */
  async acknowledgeCleared() {
    await this.records.phone.acknowledge();
    this.cleared = null;
    this.changed();
  }

  /** Photos, and what was noted of a fish: fetched when first asked for. */
  async album() {
    const { Album } = await import("../photo/album.js");
    this.#album ??= new Album(this, this.#store.photos);
    return this.#album;
  }

  /** One calculation of the engine's contract. @param {string} name @param {object} input @returns {Promise<any>} */
  calc(name, input) {
    return this.#engine.ask("calc", name, input);
  }

  /** Tries to send and fetch now. */
  syncNow() {
    this.#sync.nudge();
  }

  /** A new version is on the phone and waits. @param {() => void} takeOver */
  updateWaits(takeOver) {
    this.#takeOver = takeOver;
    this.dispatchEvent(new Event("update-ready"));
    this.changed();
  }

  get updateReady() {
    return this.#takeOver !== null;
  }

  /** Changes to the new version; the page loads again. */
  update() {
    this.#takeOver?.();
  }

  #listen() {
    this.#sync.addEventListener("status", () => this.#statusCame());
    this.#sync.addEventListener("stranger", () => this.keeper && this.#settleAgain());
    this.#sync.addEventListener("clock", (event) => this.records.clock.measured(/** @type {CustomEvent} */ (event).detail.offset));
    this.#sync.addEventListener("entries", (event) => {
      const { tank, entries } = /** @type {CustomEvent} */ (event).detail;
      this.dispatchEvent(new CustomEvent("came", { detail: tank }));
      if (tank !== this.tank?.id) return;
      this.#open?.take(entries);
      this.#seen = entries.reduce((/** @type {number} */ last, /** @type {Entry} */ { seq }) => Math.max(last, seq ?? 0), this.#seen);
      this.#rhythm.soon();
    });
    this.#sync.addEventListener("reread", (event) => this.#rereadIfOpen(/** @type {CustomEvent} */ (event).detail.tank));
    this.#sync.addEventListener("tanks", (event) => this.#tanksCame(/** @type {CustomEvent} */ (event).detail.tanks));
  }

  #statusCame() {
    const { unsent, refused } = this.#sync.status;
    if (this.records.phone.device) this.records.phone.note(unsent + refused);
    this.changed();
  }

  /** The storage was cleared under this page: it goes on with what it still knows, and what the server has comes back. */
  async #settleAgain() {
    if (!(await this.records.phone.look())) return;
    this.cleared = (await this.records.phone.cleared()) ?? null;
    await this.membership.keepAgain();
    if (this.tank) await this.open(this.tank.id);
    this.changed();
  }

  /** @param {TankRow[]} tanks */
  #tanksCame(tanks) {
    this.membership.tanks = tanks;
    const row = tanks.find(({ id }) => id === this.tank?.id);
    if (row) this.#open?.rename(row);
    this.changed();
  }

  /** @param {string} tank */
  #rereadIfOpen(tank) {
    if (tank === this.tank?.id) this.#open?.fill();
  }

  /** Tells whoever shows anything of it. */
  changed() {
    this.dispatchEvent(new Event("changed"));
  }
}
