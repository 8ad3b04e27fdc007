const FIRST_WAIT = 2_000;
const LONGEST_WAIT = 120_000;

/**
 * The server's word that something new was written at a tank. It only says that looking is worth while: a hint that is lost
 * costs time, and nothing else.
 */
export class Hints {
  #heard;
  /** @type {EventSource | null} */
  #line = null;
  /** @type {string | null} */
  #tank = null;
  #failures = 0;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #again;

  /** @param {() => void} heard */
  constructor(heard) {
    this.#heard = heard;
  }

  /** Listens at one tank and no other; null at none. @param {string | null} tank */
  follow(tank) {
    if (tank === this.#tank && this.#line) return;
    this.stop();
    this.#tank = tank;
    if (tank) this.#listen(tank);
  }

  stop() {
    clearTimeout(this.#again);
    this.#line?.close();
    this.#line = null;
  }

  /** @param {string} tank */
  #listen(tank) {
    const line = new EventSource(`/api/v1/tanks/${encodeURIComponent(tank)}/hints`);
    this.#line = line;
    line.addEventListener("message", () => {
      this.#failures = 0;
      this.#heard();
    });
    // The browser's own retry is too eager for a phone in a plant room: each failure waits longer.
    line.addEventListener("error", () => {
      line.close();
      if (this.#line !== line) return;
      this.#line = null;
      const wait = Math.min(LONGEST_WAIT, FIRST_WAIT * 2 ** this.#failures++);
      this.#again = setTimeout(() => this.#tank === tank && this.#listen(tank), wait);
    });
  }
}
