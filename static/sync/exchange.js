/** @import { Answer, Entry, Page, PushAnswers, TankRow } from "../types.js" */
/** @import { PhoneStore } from "../store/phone-store.js" */
import { batchOf, MOST_ENTRIES } from "./batch.js";
import { Healing } from "./healing.js";
import { getJson, NoAnswer, NotAllowed, postPacked, SaidNo } from "./http.js";
import { pagesOf } from "./pages.js";
import { offsetOf } from "./phone-clock.js";

/** Answers that judge what was sent; any other no is about who asks, or about the server. */
const VERDICTS = [400, 413, 422];

/**
 * One round with the server: send what waits, tank by tank, then fetch what others wrote.
 * Whatever goes wrong half-way, doing it again is right: entries are known by their id.
 */
export class Exchange {
  #store;
  #tell;
  #healing;

  /**
   * @param {PhoneStore} store
   * @param {{ entries(tank: string, entries: Entry[]): void, reread(tank: string): void, tanks(tanks: TankRow[]): void, clock(offset: number): void }} tell
   */
  constructor(store, tell) {
    this.#store = store;
    this.#tell = tell;
    this.#healing = new Healing(store);
  }

  async round() {
    const asked = Date.now();
    /** @type {{ tanks: TankRow[], serverTime: string }} */
    const { tanks, serverTime } = await getJson("/api/v1/tanks");
    this.#tell.clock(offsetOf(asked, Date.now(), serverTime));
    await this.#store.keep("tanks", tanks);
    this.#tell.tanks(tanks);
    const faults = [];
    for (const tank of tanks) {
      try {
        await this.#visit(tank);
      } catch (fault) {
        if (fault instanceof NoAnswer) throw fault;
        // What stands in the way of one tank must not hold up the others.
        faults.push(fault);
      }
    }
    const left = (await this.#store.waiting()).find(({ tank }) => !tanks.some(({ id }) => id === tank));
    if (left) faults.push(new NotAllowed(`tank ${left.tank} is not among those of this keeper any more`));
    if (faults.length > 0) throw faults[0];
  }

  /** @param {TankRow} tank */
  async #visit(tank) {
    await this.#restartWhenSetBack(tank.id, tank.epoch);
    // Who may not write any more may still read; what was tapped stays on the phone.
    let barred = null;
    const sent = await this.#push(tank.id).catch((fault) => {
      if (!(fault instanceof NotAllowed)) throw fault;
      barred = fault;
      return 0;
    });
    const cursor = await this.#store.copy.cursor(tank.id);
    if (cursor && (sent > 0 || tank.head > cursor.after || cursor.epoch === null)) await this.#pull(tank.id, tank.head);
    // What came for the first time a moment ago is looked at in the next round, when nobody waits for it.
    if (cursor?.epoch != null && (await this.#healing.look(tank.id))) this.#tell.reread(tank.id);
    if (barred) throw barred;
    await this.#sendPhotos(tank.id);
  }

  /**
   * @param {string} tank
   * @param {string | number} epoch
   * @returns {Promise<boolean>}
   */
  async #restartWhenSetBack(tank, epoch) {
    const cursor = await this.#store.copy.cursor(tank);
    if (!cursor || cursor.epoch === null || cursor.epoch === epoch) return false;
    await this.#store.copy.restart(tank, await this.#store.device(), epoch);
    await this.#store.photos.sendAgain(tank);
    this.#tell.reread(tank);
    return true;
  }

  /** @param {string} tank @returns {Promise<number>} how many were answered */
  async #push(tank) {
    for (let sent = 0; ; ) {
      const batch = batchOf(await this.#store.unsent(tank, MOST_ENTRIES));
      if (batch.length === 0) return sent;
      const answers = await this.#sent(tank, batch);
      const { placed, refused } = await this.#store.answered(batch, answers);
      // An answer that names none of what was sent would make this a loop without end.
      if (placed.length + refused.length === 0) return sent;
      sent += placed.length;
      if (placed.length > 0) this.#tell.entries(tank, placed);
      if (refused.length > 0) this.#tell.reread(tank);
    }
  }

  /** Pictures go last: no feeding waits for one. @param {string} tank */
  async #sendPhotos(tank) {
    const ready = await this.#store.photos.ready(tank);
    if (ready.length === 0) return;
    const { sendPhotos } = await import("./photo-post.js");
    await sendPhotos(this.#store.photos, tank, ready);
  }

  /**
   * @param {string} tank
   * @param {Entry[]} batch
   * @returns {Promise<Answer[]>}
   */
  async #sent(tank, batch) {
    try {
      const said = /** @type {PushAnswers} */ (await postPacked(`/api/v1/tanks/${tank}/entries`, { entries: batch }));
      return said.answers;
    } catch (fault) {
      if (!(fault instanceof SaidNo && VERDICTS.includes(fault.problem.status))) throw fault;
      // A whole batch refused tells nothing about each: they go one by one, so that the poisoned one stands alone.
      if (batch.length > 1) return this.#sent(tank, batch.slice(0, 1));
      return [{ id: batch[0].id, outcome: "refused", problem: fault.problem }];
    }
  }

  /** @param {string} tank @param {number} head where its journal ended when it was last heard of */
  async #pull(tank, head) {
    for (let anew = true; anew; ) {
      anew = false;
      const after = (await this.#store.copy.cursor(tank))?.after ?? 0;
      for await (const page of pagesOf((place) => this.#page(tank, place), after, head)) {
        anew = await this.#restartWhenSetBack(tank, page.epoch);
        if (anew) break;
        await this.#store.photos.erasedByOthers(page.entries);
        await this.#store.copy.pulled(tank, page);
        if (page.entries.length > 0) this.#tell.entries(tank, page.entries);
      }
    }
  }

  /** @param {string} tank @param {number} after @returns {Promise<Page>} */
  #page(tank, after) {
    return getJson(`/api/v1/tanks/${tank}/entries?after=${after}&limit=${MOST_ENTRIES}`);
  }
}
