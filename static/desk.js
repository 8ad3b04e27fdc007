/** @import { Cleared, Entry, Food, Guarded, Household, Keeper, ReferenceMaps, TankRow, Today } from "./types.js" */
/** @import { PhoneStore } from "./store/phone-store.js" */
/** @import { Sync } from "./sync/sync.js" */
import { Engine } from "./engine/index.js";
import { OpenTank } from "./open-tank.js";
import { Records } from "./records/records.js";
import { newId } from "./store/ids.js";
import { StorageCleared } from "./store/phone-store.js";
import { deleteAt, getJson, NoAnswer, NotAllowed, postJson, putJson, SignInNeeded } from "./sync/http.js";
import { isoOf } from "./text/local-time.js";

const REFOLD_EVERY_MILLIS = 5 * 60_000;
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
  /** @type {Keeper | null} */
  keeper = null;
  /** @type {TankRow[]} */
  tanks = [];
  /** @type {Household[]} */
  households = [];
  /** The published tables. @type {ReferenceMaps} */
  reference = { foods: new Map(), supplements: new Map(), species: new Map(), guilds: new Map(), sources: new Map(), families: new Map(), constants: new Map() };
  /** Where the records are, and what of them waits for a person. */
  records;
  /** Storage that was cleared away under this page, until somebody has read of it. @type {Cleared | null} */
  cleared = null;
  #store;
  #sync;
  #engine;
  /** @type {Engine | null} */
  #aside = null;
  /** @type {OpenTank | null} */
  #open = null;
  /** @type {import("./photo/album.js").Album | undefined} */
  #album;
  #refoldWanted = false;
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
    this.records = new Records(store, sync);
  }

  /** Takes up what the phone holds; needs no network. @param {Promise<ReferenceMaps>} tables on their way */
  async start(tables) {
    const settings = ["keeper", "tanks", "households", "openTank"].map((key) => this.#store.setting(key));
    await Promise.all([this.records.phone.look(), this.records.clock.start()]);
    this.cleared = (await this.records.phone.cleared()) ?? null;
    const [keeper, tanks, households, last] = await Promise.all(settings);
    this.keeper = keeper ?? null;
    this.tanks = tanks ?? [];
    this.households = households ?? [];
    this.#listen();
    if (this.keeper && this.tanks.some(({ id }) => id === last)) await this.open(last);
    this.reference = await tables;
    setInterval(() => this.#refold(), REFOLD_EVERY_MILLIS);
    document.addEventListener("visibilitychange", () => !document.hidden && this.#refold());
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
    return own.length ? new Map([...this.reference.foods, ...own.map((food) => /** @type {[string, Food]} */ ([food.key, food]))])
      : this.reference.foods;
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

  /**
   * @param {string} name
   * @param {string} password
   */
  async signIn(name, password) {
    await this.comeIn("/api/v1/session", { name, password });
  }

  /**
   * Signs in, joins, or begins: whatever the address, the answer says who is here from now on.
   * @param {string} path
   * @param {object} asked
   */
  async comeIn(path, asked) {
    await this.#cameIn(await postJson(path, { ...asked, device: phoneName() }));
  }

  /** What this keeper may do has changed: asks the server who they are now. */
  async askAgain() {
    await this.#cameIn(await getJson("/api/v1/session"));
  }

  /** @param {{ keeper: Keeper, households: Household[] }} session */
  async #cameIn(session) {
    const { tanks } = await getJson("/api/v1/tanks");
    await this.#store.keep("keeper", session.keeper);
    await this.#store.keep("households", session.households);
    this.households = session.households;
    await this.#store.keep("tanks", tanks);
    this.keeper = session.keeper;
    this.tanks = tanks;
    this.#sync.signedIn();
    if (this.tank && !tanks.some((/** @type {TankRow} */ { id }) => id === this.tank?.id)) this.#open = null;
    if (!this.tank && tanks.length === 1) await this.open(tanks[0].id);
    this.#changed();
  }

  /** One more tank for a household, opened at once. @param {string} household @param {{ name?: unknown, zone?: unknown }} asked */
  async addTank(household, asked) {
    const { id } = await postJson(`/api/v1/households/${encodeURIComponent(household)}/tanks`, asked);
    const { tanks } = await getJson("/api/v1/tanks");
    await this.#store.keep("tanks", tanks);
    this.tanks = tanks;
    await this.open(id);
    await this.record("record", { record: "tank", key: id, set: { name: asked.name, usualFoods: foodsToBeginWith } });
  }

  /** Puts a tank away with all its journal, or brings it back. @param {string} id @param {boolean} away */
  async putAway(id, away) {
    const path = `/api/v1/tanks-away/${encodeURIComponent(id)}`;
    await (away ? putJson(path, {}) : deleteAt(path));
    const { tanks } = await getJson("/api/v1/tanks");
    await this.#store.keep("tanks", tanks);
    this.tanks = tanks;
    if (away && this.tank?.id === id) {
      this.#open = null;
      this.#sync.watch(null);
      await this.#store.keep("openTank", undefined);
    }
    this.#changed();
  }

  /** The tanks that were put away. @returns {Promise<TankRow[]>} */
  async tanksAway() {
    return (await getJson("/api/v1/tanks-away")).tanks;
  }

  /** A code that lets one person in. @param {string} household @param {string} role @returns {Promise<{ code: string }>} */
  invite(household, role) {
    return postJson(`/api/v1/households/${encodeURIComponent(household)}/invitations`, { role });
  }

  /** Entries stay on the phone, the unsent ones too: they go out when their keeper signs in again. */
  async signOut() {
    await deleteAt("/api/v1/session").catch(passOverIfUnreachable);
    await this.#store.keep("keeper", undefined);
    await this.#store.keep("openTank", undefined);
    this.#sync.watch(null);
    this.keeper = null;
    this.#open = null;
    this.#changed();
  }

  /** @param {string} id of a tank in the list */
  async open(id) {
    const row = this.tanks.find((tank) => tank.id === id);
    if (!row) throw new Error(`no tank ${id} among those of ${this.keeper?.name}`);
    const opened = new OpenTank(row, this.#engine, this.records.clock, () => this.#changed());
    opened.glimpse(await this.#store.setting(`glance ${id}`));
    this.#open = opened;
    opened.fill();
    this.#changed();
    this.#seen = (await this.#store.cursor(id))?.after ?? 0;
    await this.#store.follow(id);
    await this.#store.keep("openTank", id);
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
  async record(kind, body, { happenedAt, picture } = {}) {
    const { keeper } = this;
    const opened = this.#opened();
    if (!keeper) throw new Error("nobody has signed in on this phone");
    const entry = await this.#written({
      id: newId(), tank: opened.tank.id, device: this.records.phone.device, kind, v: 1, happenedAt: happenedAt ?? opened.nowIso(),
      zone: opened.zone, recordedAt: new Date().toISOString(), by: keeper.id,
      body: kind === "record" ? withSeen(body, this.today?.guarded ?? []) : structuredClone(body),
    }, picture);
    opened.take([entry]);
    // The tap is answered first, the day is reckoned right after.
    this.#refoldAfterPaint();
    // Counting and sending are the network's business: a tap does not wait for them.
    this.#sync.wrote({ type: "entries", tank: entry.tank, entries: [entry] });
    return entry;
  }

  /** A tap must not be lost because the storage was cleared a moment ago. @param {Omit<Entry, "deviceSeq">} draft @param {ArrayBuffer} [picture] */
  async #written(draft, picture) {
    try {
      return await this.#store.record(draft, picture);
    } catch (fault) {
      if (!(fault instanceof StorageCleared)) throw fault;
      await this.#settleAgain();
      return this.#store.record({ ...draft, device: this.records.phone.device }, picture);
    }
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
    const { Album } = await import("./photo/album.js");
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

  /** Who is reckoned to have got how much of one of the last days' feedings. @param {string} feeding its id */
  shares(feeding) {
    return this.#opened().shares(feeding);
  }

  /** Begins to keep a copy of these tanks too, so that their entries come with the next exchange. @param {string[]} ids */
  async follow(ids) {
    for (const id of ids) await this.#store.follow(id);
    this.#sync.nudge();
  }

  /**
   * How a tank stands that is not on the desk, from what this phone holds of it.
   * @param {TankRow} row
   * @returns {Promise<{ today: Today | null, unsent: number, whole: boolean }>} whole: all of it is here
   */
  async lookAt(row) {
    // An engine of its own: the one of the desk holds the open tank.
    this.#aside ??= new Engine();
    const now = isoOf(this.records.clock.now(), row.zone || Intl.DateTimeFormat().resolvedOptions().timeZone);
    const [waiting, cursor, today] = await Promise.all([this.#store.waiting(), this.#store.cursor(row.id),
      this.#aside.ask("open", row.id, now).catch((/** @type {unknown} */ fault) => console.error("provender: a tank could not be reckoned:", fault))]);
    return { today: today ?? null, unsent: waiting.filter(({ tank }) => tank === row.id).length, whole: (cursor?.after ?? -1) >= row.head };
  }

  /** Lets go of what {@link lookAt} needed. */
  lookAway() {
    this.#aside?.end();
    this.#aside = null;
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
      this.#refoldSoon();
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
    await this.#store.keep("keeper", this.keeper ?? undefined);
    await this.#store.keep("households", this.households);
    await this.#store.keep("tanks", this.tanks);
    if (this.tank) await this.open(this.tank.id);
    this.#changed();
  }

  /** @param {TankRow[]} tanks */
  #tanksCame(tanks) {
    this.tanks = tanks;
    const row = tanks.find(({ id }) => id === this.tank?.id);
    if (row) this.#open?.rename(row);
    this.#changed();
  }

  /** @param {string} tank */
  #rereadIfOpen(tank) {
    if (tank === this.tank?.id) this.#open?.fill();
  }

  // A page in the background is never painted, so it is not waited for.
  #refoldAfterPaint() {
    if (document.hidden) return this.#refoldSoon();
    requestAnimationFrame(() => setTimeout(() => this.#refold()));
  }

  // Pages arrive in bursts; one fold after the burst is enough.
  #refoldSoon() {
    if (this.#refoldWanted) return;
    this.#refoldWanted = true;
    setTimeout(() => {
      this.#refoldWanted = false;
      this.#refold();
    }, 50);
  }

  #refold() {
    this.#open?.fold();
  }

  #changed() {
    this.dispatchEvent(new Event("changed"));
  }
}

/** What this phone is called in its keeper's list of phones. */
function phoneName() {
  const { userAgentData, platform } = /** @type {{ userAgentData?: { platform: string }, platform: string }} */ (navigator);
  return userAgentData?.platform || platform;
}

/**
 * A change of a field that can harm says which change before it its writer had seen; else it waits for a person.
 * @param {Record<string, any>} body of a record @param {Guarded[]} guarded what stands now
 */
function withSeen(body, guarded) {
  const saw = Object.fromEntries(guarded.filter(({ record, key, field }) => record === body.record && key === body.key && field in body.set)
    .map(({ field, place }) => [field, place]));
  return structuredClone(Object.keys(saw).length ? { ...body, saw: { ...saw, ...body.saw } } : body);
}

/** Without the server the phone forgets its keeper all the same; the next signing in ends the old session. @param {unknown} fault */
function passOverIfUnreachable(fault) {
  if (!(fault instanceof NoAnswer || fault instanceof NotAllowed || fault instanceof SignInNeeded)) throw fault;
}
