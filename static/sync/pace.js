/**
 * When to try again: soon after the first failure, then ever later, never all phones at once.
 */
export class Pace {
  static #FIRST = 2_000;
  static #LONGEST = 300_000;
  static #STEADY = 30_000;
  #failures = 0;

  /** @param {() => number} chance a number from 0 to 1 */
  constructor(chance = Math.random) {
    this.chance = chance;
  }

  succeeded() {
    this.#failures = 0;
  }

  failed() {
    this.#failures++;
  }

  /** Milliseconds until the next try. */
  next() {
    const wait = this.#failures === 0
      ? Pace.#STEADY
      : Math.min(Pace.#LONGEST, Pace.#FIRST * 2 ** Math.min(this.#failures - 1, 10));
    return wait * (0.5 + this.chance() / 2);
  }
}
