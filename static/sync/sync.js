/** @import { Refusal, SyncStatus, TabNews } from "../types.js" */
/** @import { PhoneStore } from "../store/phone-store.js" */
import { Exchange } from "./exchange.js";
import { Hints } from "./hints.js";
import { NotAllowed, SignInNeeded } from "./http.js";
import { Pace } from "./pace.js";

const NAME = "provender-sync";

/**
 * Keeps the phone and the server in step. Of all open tabs one does the work; the others hear from it.
 * @fires status - how things stand with the server
 * @fires entries - detail {tank, entries}: these were written, got their place, or came from others
 * @fires reread - detail {tank}: what was known of this tank is to be read from the store again
 * @fires tanks - detail {tanks}
 * @fires clock - detail {offset}: the server's clock before this phone's
 * @fires stranger - nobody is signed in, as far as the storage knows
 */
export class Sync extends EventTarget {
  #store;
  #channel = new BroadcastChannel(NAME);
  #pace = new Pace();
  #hints = new Hints(() => this.#round());
  /** @type {string | null} */
  #open = null;
  #exchange;
  #stop = new AbortController();
  #leads = false;
  /** @type {Promise<void> | null} */
  #running = null;
  #again = false;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #timer;
  /** @type {SyncStatus} */
  status = { unsent: 0, photos: 0, refused: 0, oldestUnsent: null, state: "sent", why: null, lastContact: null };
  /** @type {"offline" | "signIn" | "notAllowed" | null} */
  #trouble = null;
  /** @type {string | null} */
  #lastContact = null;

  /** @param {PhoneStore} store */
  constructor(store) {
    super();
    this.#store = store;
    this.#exchange = new Exchange(store, {
      entries: (tank, entries) => this.#tell({ type: "entries", tank, entries }),
      reread: (tank) => this.#tell({ type: "reread", tank }),
      tanks: (tanks) => this.#tell({ type: "tanks", tanks }),
      clock: (offset) => this.#tell({ type: "clock", offset }),
    });
  }

  /** Says at once what waits on this phone; turns to the network later. @param {Promise<unknown>} [ready] what comes before the network */
  async start(ready) {
    const { signal } = this.#stop;
    this.#channel.addEventListener("message", ({ data }) => this.#heard(data), { signal });
    addEventListener("online", () => this.nudge(), { signal });
    document.addEventListener("visibilitychange", () => !document.hidden && this.nudge(), { signal });
    await this.#count();
    await ready;
    this.#takeTheLead();
  }

  stop() {
    this.#stop.abort();
    this.#hints.stop();
    clearTimeout(this.#timer);
    this.#channel.close();
  }

  /** The tank on this tab's desk: what others write there is to be seen soon. @param {string | null} tank */
  watch(tank) {
    this.#open = tank;
    if (this.#leads) this.#hints.follow(tank);
  }

  /** Something waits to be sent, or the way may be open again: try now. */
  nudge() {
    if (this.#leads) this.#round();
    else this.#channel.postMessage({ type: "nudge" });
  }

  /** Entries that this tab wrote, for the other tabs. @param {Extract<TabNews, { type: "entries" }>} news */
  async wrote(news) {
    this.#channel.postMessage(news);
    await this.#count();
    this.nudge();
  }

  /** A keeper signed in: nothing stands in the way any more. */
  signedIn() {
    this.#trouble = null;
    this.nudge();
  }

  // Without a trusted connection there are no locks; then every tab sends, which the journal bears: ids are known.
  #takeTheLead() {
    const lead = () => {
      this.#leads = true;
      this.#round();
      this.#hints.follow(this.#open);
      return new Promise((end) => this.#stop.signal.addEventListener("abort", end));
    };
    if (!navigator.locks) lead();
    else navigator.locks.request(NAME, { signal: this.#stop.signal }, lead).catch(() => {});
  }

  /** @param {TabNews} news */
  #heard(news) {
    if (news.type === "nudge") {
      if (this.#leads) this.#round();
    } else if (news.type === "status") {
      this.#trouble = news.status.why === "refused" ? null : news.status.why;
      this.#lastContact = news.status.lastContact;
      this.#show(news.status);
    } else {
      this.dispatchEvent(new CustomEvent(news.type, { detail: news }));
    }
  }

  /** @param {TabNews} news */
  #tell(news) {
    this.#channel.postMessage(news);
    this.#heard(news);
  }

  #round() {
    this.#again = this.#running !== null;
    this.#running ??= this.#rounds().finally(() => {
      this.#running = null;
    });
    return this.#running;
  }

  async #rounds() {
    clearTimeout(this.#timer);
    do {
      this.#again = false;
      await this.#oneRound();
      await this.#count();
    } while (this.#again && this.#trouble === null && !this.#stop.signal.aborted);
    if (!this.#stop.signal.aborted) this.#timer = setTimeout(() => this.#round(), this.#pace.next());
  }

  async #oneRound() {
    if (!(await this.#store.setting("keeper"))) {
      this.dispatchEvent(new Event("stranger"));
      return;
    }
    try {
      await this.#exchange.round();
      this.#pace.succeeded();
      this.#trouble = null;
      this.#lastContact = new Date().toISOString();
    } catch (fault) {
      this.#pace.failed();
      this.#trouble = fault instanceof SignInNeeded ? "signIn" : fault instanceof NotAllowed ? "notAllowed" : "offline";
      console.info("provender: not in step with the server, trying again later:", fault);
    }
  }

  async #count() {
    const [waiting, refusals, photos] = await Promise.all([this.#store.waiting(), this.#store.refusals(), this.#store.photos.waiting()]);
    const status = {
      unsent: waiting.length,
      photos: photos.length,
      refused: refusals.length,
      oldestUnsent: waiting.map((one) => one.recordedAt).sort()[0] ?? null,
      lastContact: this.#lastContact,
      ...standing(waiting.length + photos.length, refusals, this.#trouble),
    };
    this.#channel.postMessage({ type: "status", status });
    this.#show(status);
  }

  /** @param {SyncStatus} status */
  #show(status) {
    const before = this.status;
    this.status = status;
    if (JSON.stringify(status) !== JSON.stringify(before)) this.dispatchEvent(new Event("status"));
  }
}

/**
 * @param {number} unsent
 * @param {Refusal[]} refusals
 * @param {"offline" | "signIn" | "notAllowed" | null} trouble
 * @returns {Pick<SyncStatus, "state" | "why">}
 */
function standing(unsent, refusals, trouble) {
  if (trouble === "signIn" || trouble === "notAllowed") return { state: "needsYou", why: trouble };
  if (refusals.length > 0) return { state: "needsYou", why: "refused" };
  return { state: unsent > 0 ? "onPhone" : "sent", why: trouble };
}
