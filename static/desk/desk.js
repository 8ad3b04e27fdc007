/** @import { Cleared, Entry, Food, ReferenceMaps, TankRow } from "../types.js" */
/** @import { Engine } from "../engine/index.js" */
/** @import { PhoneStore } from "../store/phone-store.js" */
/** @import { Sync } from "../sync/sync.js" */
import { readReference } from "../engine/index.js";
import { Records } from "../records/records.js";
import { Membership } from "./membership.js";
import { OpenTank } from "./open-tank.js";
import { OtherTanks } from "./other-tanks.js";
import { Recorder } from "./recorder.js";
import { Rhythm, painted } from "./rhythm.js";

const A_PAGE = 500;

/** What a new tank is likely to get, until its steward says otherwise: keeping practice, one food of each kind. */
const foodsToBeginWith = ["nori_dried", "mysis_frozen", "brine_shrimp_adult_enriched", "krill_frozen", "mussel_meat",
  "shrimp_peeled", "sponge_prepared_frozen", "clam_half_shell", "pellet_small_soft"];

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
  /** The published foods together with these own ones. @type {{ own: Food[], published: Map<string, Food>, all: Map<string, Food> }} */
  #foods = { own: [], published: new Map(), all: new Map() };
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

  get today() {
    return this.#open?.today ?? null;
  }

  /** What a feeding can be tapped in from: today, or what this phone saw last until that is reckoned. */
  get glance() {
    return this.today ?? this.#open?.glance ?? null;
  }

  /** The published foods and this tank's own, by key. @returns {Map<string, Food>} */
  get foods() {
    const own = this.glance?.ownFoods ?? [];
    if (!own.length) return this.reference.foods;
    if (this.#foods.own !== own || this.#foods.published !== this.reference.foods) {
      const all = new Map([...this.reference.foods, ...own.map((food) => /** @type {[string, Food]} */ ([food.key, food]))]);
      this.#foods = { own, published: this.reference.foods, all };
    }
    return this.#foods.all;
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

  /** Signs in, joins, or begins, and lays a tank on the desk when there is but one. @param {string} path @param {object} asked */
  async comeIn(path, asked) {
    await this.membership.comeIn(path, asked);
    await this.#cameIn();
  }

  /** What this keeper may do has changed: asks the server who they are now. */
  async askAgain() {
    await this.membership.askAgain();
    await this.#cameIn();
  }

  async #cameIn() {
    const { tanks } = this;
    this.#sync.signedIn();
    if (this.tank && !tanks.some(({ id }) => id === this.tank?.id)) this.#open = null;
    if (!this.tank && tanks.length === 1) await this.open(tanks[0].id);
    this.#changed();
    if (this.reference.foods.size) return;
    this.reference = await readReference();
    this.#changed();
  }

  /** One more tank for a household, opened at once. @param {string} household @param {{ name?: unknown, zone?: unknown }} asked */
  async addTank(household, asked) {
    const id = await this.membership.addTank(household, asked);
    await this.open(id);
    await this.record("record", { record: "tank", key: id, set: { name: asked.name, usualFoods: foodsToBeginWith } });
  }

  /** Puts a tank away with all its journal, or brings it back. @param {string} id @param {boolean} away */
  async putAway(id, away) {
    await this.membership.putAway(id, away);
    if (away && this.tank?.id === id) await this.#clear();
    this.#changed();
  }

  /** Entries stay on the phone, the unsent ones too: they go out when their keeper signs in again. */
  async signOut() {
    await this.membership.leave();
    await this.#clear();
    this.#changed();
  }

  async #clear() {
    this.#open = null;
    this.#sync.watch(null);
    await this.#store.keep("openTank", undefined);
  }

  /** @param {string} id of a tank in the list */
  async open(id) {
    const row = this.tanks.find((tank) => tank.id === id);
    if (!row) throw new Error(`no tank ${id} among those of ${this.keeper?.name}`);
    const opened = new OpenTank(row, this.#engine, this.records.clock, () => this.#changed());
    const [glance, cursor, last] = await Promise.all([this.#store.setting(`glance ${id}`), this.#store.copy.cursor(id), this.#store.setting("openTank")]);
    opened.glimpse(glance);
    this.#open = opened;
    this.#seen = cursor?.after ?? 0;
    opened.fill(opened.glance ? painted() : undefined);
    this.#changed();
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
    const { keeper } = this;
    const opened = this.#opened();
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

  /** An entry of the open tank and everything done to it, in the order in which it counts. @param {string} id */
  history(id) {
    return this.#opened().history(id);
  }

  /** Somebody has read that the storage was cleared. */
  async acknowledgeCleared() {
    await this.records.phone.acknowledge();
    this.cleared = null;
    this.#changed();
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

  /** What feeding does to the open tank's water, reckoned when asked. */
  water() {
    return this.#opened().water();
  }

  /** How the open tank stood at the end of a day that has passed. @param {number} day epoch day */
  endOf(day) {
    return this.#opened().endOf(day);
  }

  /** What the open tank and each fish were due and got in the weeks to the end of a day. @param {number} day epoch day */
  sumsTo(day) {
    return this.#opened().sumsTo(day);
  }

  /** Who is reckoned to have got how much of one of the last days' feedings. @param {string} feeding its id */
  shares(feeding) {
    return this.#opened().shares(feeding);
  }

  nowIso() {
    return this.#opened().nowIso();
  }

  /** A minute of a local day where the tank stands. @param {number} day epoch day @param {number} minute */
  isoAt(day, minute) {
    return this.#opened().isoAt(day, minute);
  }

  /** Tries to send and fetch now. */
  syncNow() {
    this.#sync.nudge();
  }

  /** A new version is on the phone and waits. @param {() => void} takeOver */
  updateWaits(takeOver) {
    this.#takeOver = takeOver;
    this.dispatchEvent(new Event("update-ready"));
    this.#changed();
  }

  get updateReady() {
    return this.#takeOver !== null;
  }

  /** Changes to the new version; the page loads again. */
  update() {
    this.#takeOver?.();
  }

  #opened() {
    if (!this.#open) throw new Error("no tank is open");
    return this.#open;
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
    this.#changed();
  }

  /** The storage was cleared under this page: it goes on with what it still knows, and what the server has comes back. */
  async #settleAgain() {
    if (!(await this.records.phone.look())) return;
    this.cleared = (await this.records.phone.cleared()) ?? null;
    await this.membership.keepAgain();
    if (this.tank) await this.open(this.tank.id);
    this.#changed();
  }

  /** @param {TankRow[]} tanks */
  #tanksCame(tanks) {
    this.membership.tanks = tanks;
    const row = tanks.find(({ id }) => id === this.tank?.id);
    if (row) this.#open?.rename(row);
    this.#changed();
  }

  /** @param {string} tank */
  #rereadIfOpen(tank) {
    if (tank === this.tank?.id) this.#open?.fill();
  }

  #changed() {
    this.dispatchEvent(new Event("changed"));
  }
}
