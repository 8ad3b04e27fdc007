/** A long list or page drawn over several frames, so that no tap waits for its end. */
export class BitByBit {
  #element;
  #first;
  #drawn;
  #step;
  #waiting = false;

  /** @param {{ requestUpdate(): void }} element @param {number} first how many at once @param {number} [step] how many more each time */
  constructor(element, first, step = first) {
    this.#element = element;
    this.#first = first;
    this.#drawn = first;
    this.#step = step;
  }

  /** How many are drawn at most. */
  get drawn() {
    return this.#drawn;
  }

  /** As much of a list as is to be drawn now. @template T @param {T[]} list */
  of(list) {
    if (list.length > this.#drawn) this.#soon();
    return list.slice(0, this.#drawn);
  }

  /** What stands below comes a frame later. @param {() => unknown} part */
  below(part) {
    if (this.#drawn > this.#first) return part();
    this.#soon();
    return "";
  }

  #soon() {
    if (this.#waiting) return;
    this.#waiting = true;
    requestAnimationFrame(() => setTimeout(() => {
      this.#waiting = false;
      this.#drawn += this.#step;
      this.#element.requestUpdate();
    }));
  }
}
