/** @import { Entry, Guarded, Keeper } from "../types.js" */
/** @import { PhoneStore } from "../store/phone-store.js" */
/** @import { ThisPhone } from "../store/this-phone.js" */
/** @import { OpenTank } from "./open-tank.js" */
import { newId } from "../store/ids.js";
import { StorageCleared } from "../store/phone-store.js";

/** Puts what a keeper tapped on this phone's disk, with all that an entry says of itself. */
export class Recorder {
  #store;
  #phone;
  #settleAgain;

  /**
   * @param {PhoneStore} store
   * @param {ThisPhone} phone
   * @param {() => Promise<void>} settleAgain what to do first when the storage was cleared
   */
  constructor(store, phone, settleAgain) {
    this.#store = store;
    this.#phone = phone;
    this.#settleAgain = settleAgain;
  }

  /**
   * @param {OpenTank} opened
   * @param {Keeper} keeper
   * @param {{ kind: string, body: Record<string, unknown>, happenedAt?: string, picture?: ArrayBuffer }} what
   * @returns {Promise<Entry>} once it is safely saved
   */
  write(opened, keeper, { kind, body, happenedAt, picture }) {
    return this.#written({
      id: newId(), tank: opened.tank.id, device: this.#phone.device, kind, v: 1, happenedAt: happenedAt ?? opened.nowIso(),
      zone: opened.zone, recordedAt: new Date().toISOString(), by: keeper.id,
      body: kind === "record" ? withSeen(body, opened.today?.guarded ?? []) : structuredClone(body),
    }, picture);
  }

  /** A tap must not be lost because the storage was cleared a moment ago. @param {Omit<Entry, "deviceSeq">} draft @param {ArrayBuffer} [picture] */
  async #written(draft, picture) {
    try {
      return await this.#store.record(draft, picture);
    } catch (fault) {
      if (!(fault instanceof StorageCleared)) throw fault;
      await this.#settleAgain();
      return this.#store.record({ ...draft, device: this.#phone.device }, picture);
    }
  }
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
