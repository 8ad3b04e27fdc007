/** @import { Household, Keeper, TankRow } from "../types.js" */
/** @import { PhoneStore } from "../store/phone-store.js" */
import { deleteAt, getJson, NoAnswer, NotAllowed, postJson, putJson, SignInNeeded } from "../sync/http.js";

/** Who is here, in which households, and which tanks they see: as the server said last, kept on the phone. */
export class Membership {
  /** @type {Keeper | null} */
  keeper = null;
  /** @type {TankRow[]} */
  tanks = [];
  /** @type {Household[]} */
  households = [];
  #store;

  /** @param {PhoneStore} store */
  constructor(store) {
    this.#store = store;
  }

  /** Takes up what the phone holds. */
  async start() {
    const [keeper, tanks, households] = await Promise.all(["keeper", "tanks", "households"].map((key) => this.#store.setting(key)));
    this.keeper = keeper ?? null;
    this.tanks = tanks ?? [];
    this.households = households ?? [];
  }

  /** Signs in, joins, or begins: whatever the address, the answer says who is here. @param {string} path @param {object} asked */
  async comeIn(path, asked) {
    await this.#cameIn(await postJson(path, { ...asked, device: phoneName() }));
  }

  async askAgain() {
    await this.#cameIn(await getJson("/api/v1/session"));
  }

  /** @param {{ keeper: Keeper, households: Household[] }} session */
  async #cameIn({ keeper, households }) {
    const { tanks } = await getJson("/api/v1/tanks");
    await this.#store.keep("keeper", keeper);
    await this.#store.keep("households", households);
    this.households = households;
    await this.#store.keep("tanks", tanks);
    this.keeper = keeper;
    this.tanks = tanks;
  }

  /** Without the server the phone forgets its keeper all the same; the next signing in ends the old session. */
  async leave() {
    await deleteAt("/api/v1/session").catch((fault) => {
      if (!(fault instanceof NoAnswer || fault instanceof NotAllowed || fault instanceof SignInNeeded)) throw fault;
    });
    await this.#store.keep("keeper", undefined);
    this.keeper = null;
  }

  /** Puts what is known into a storage that was cleared. */
  async keepAgain() {
    await this.#store.keep("keeper", this.keeper ?? undefined);
    await this.#store.keep("households", this.households);
    await this.#store.keep("tanks", this.tanks);
  }

  /** @param {string} household @param {{ name?: unknown, zone?: unknown }} asked @returns {Promise<string>} the new tank's id */
  async addTank(household, asked) {
    const { id } = await postJson(`/api/v1/households/${encodeURIComponent(household)}/tanks`, asked);
    await this.#readTanks();
    return id;
  }

  /** Puts a tank away with all its journal, or brings it back. @param {string} id @param {boolean} away */
  async putAway(id, away) {
    const path = `/api/v1/tanks-away/${encodeURIComponent(id)}`;
    await (away ? putJson(path, {}) : deleteAt(path));
    await this.#readTanks();
  }

  async #readTanks() {
    const { tanks } = await getJson("/api/v1/tanks");
    await this.#store.keep("tanks", tanks);
    this.tanks = tanks;
  }

  /** The tanks that were put away. @returns {Promise<TankRow[]>} */
  async tanksAway() {
    return (await getJson("/api/v1/tanks-away")).tanks;
  }

  /** A code that lets one person in. @param {string} household @param {string} role @returns {Promise<{ code: string }>} */
  invite(household, role) {
    return postJson(`/api/v1/households/${encodeURIComponent(household)}/invitations`, { role });
  }
}

/** What this phone is called in its keeper's list of phones. */
function phoneName() {
  const { userAgentData, platform } = /** @type {{ userAgentData?: { platform: string }, platform: string }} */ (navigator);
  return userAgentData?.platform || platform;
}
