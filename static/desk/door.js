/** @import { Desk } from "./desk.js" */
/** @import { Membership } from "./membership.js" */
/** @import { Sync } from "../sync/sync.js" */
import { readReference } from "../engine/index.js";

/** What a new tank is likely to get, until its steward says otherwise: keeping practice, one food of each kind. */
const foodsToBeginWith = ["nori_dried", "mysis_frozen", "brine_shrimp_adult_enriched", "krill_frozen", "mussel_meat",
  "shrimp_peeled", "sponge_prepared_frozen", "clam_half_shell", "pellet_small_soft"];

/** Where keepers come in and leave, and tanks with them. */
export class Door {
  #desk;
  #membership;
  #sync;

  /** @param {Desk} desk @param {Membership} membership @param {Sync} sync */
  constructor(desk, membership, sync) {
    this.#desk = desk;
    this.#membership = membership;
    this.#sync = sync;
  }

  /** Signs in, joins, or begins, and lays a tank on the desk when there is but one. @param {string} path @param {object} asked */
  async comeIn(path, asked) {
    await this.#membership.comeIn(path, asked);
    await this.#cameIn();
  }

  /** What this keeper may do has changed: asks the server who they are now. */
  async askAgain() {
    await this.#membership.askAgain();
    await this.#cameIn();
  }

  async #cameIn() {
    const desk = this.#desk;
    const { tanks } = desk;
    this.#sync.signedIn();
    if (desk.tank && !tanks.some(({ id }) => id === desk.tank?.id)) desk.layAside();
    if (!desk.tank && tanks.length === 1) await desk.open(tanks[0].id);
    desk.changed();
    if (desk.reference.foods.size) return;
    desk.reference = await readReference();
    desk.changed();
  }

  /** One more tank for a household, opened at once. @param {string} household @param {{ name?: unknown, zone?: unknown }} asked */
  async addTank(household, asked) {
    const id = await this.#membership.addTank(household, asked);
    await this.#desk.open(id);
    await this.#desk.record("record", { record: "tank", key: id, set: { name: asked.name, usualFoods: foodsToBeginWith } });
  }

  /** Puts a tank away with all its journal, or brings it back. @param {string} id @param {boolean} away */
  async putAway(id, away) {
    await this.#membership.putAway(id, away);
    if (away && this.#desk.tank?.id === id) await this.#desk.close();
    this.#desk.changed();
  }

  /** Entries stay on the phone, the unsent ones too: they go out when their keeper signs in again. */
  async signOut() {
    await this.#membership.leave();
    await this.#desk.close();
    this.#desk.changed();
  }
}
