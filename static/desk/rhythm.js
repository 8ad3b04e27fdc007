const EVERY_MILLIS = 5 * 60_000;
const A_BURST_MILLIS = 50;
const AT_MOST_MILLIS = 1_000;
const UNTIL_SETTLED_MILLIS = 5_000;

/** When the day is reckoned anew: after a tap, after news, every few minutes, and when somebody looks at the page again. */
export class Rhythm {
  #reckon;
  #soonWanted = false;

  /** @param {() => void} reckon */
  constructor(reckon) {
    this.#reckon = reckon;
  }

  start() {
    setInterval(this.#reckon, EVERY_MILLIS);
    document.addEventListener("visibilitychange", () => !document.hidden && this.#reckon());
  }

  /** The tap is answered first. */
  afterPaint() {
    painted().then(this.#reckon);
  }

  /** Pages arrive in bursts; one fold after the burst is enough. */
  soon() {
    if (this.#soonWanted) return;
    this.#soonWanted = true;
    setTimeout(() => {
      this.#soonWanted = false;
      this.#reckon();
    }, A_BURST_MILLIS);
  }
}

/** That what was just changed is on screen. A page in the background is never painted, so that is not waited for there. @returns {Promise<void>} */
export function painted() {
  return new Promise((seen) => (document.hidden ? setTimeout(seen, A_BURST_MILLIS) : requestAnimationFrame(() => setTimeout(seen))));
}

/** That there is nothing to do, or has not been for long; not every browser tells. @returns {Promise<unknown>} */
export function idle() {
  return new Promise((now) => ("requestIdleCallback" in globalThis ? requestIdleCallback(now, { timeout: AT_MOST_MILLIS }) : setTimeout(now, A_BURST_MILLIS)));
}

/** That whoever opened the page has had time for a first tap. @returns {Promise<void>} */
export function settled() {
  return new Promise((now) => setTimeout(now, UNTIL_SETTLED_MILLIS));
}
