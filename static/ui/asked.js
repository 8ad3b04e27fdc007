/** One question of an element to the engine, which answers later: what is known meanwhile, and a new drawing when the answer is there. @template T */
export class Asked {
  #element;
  /** @type {unknown[]} */
  #about = [];
  /** @type {T | undefined} */
  #known;

  /** @param {{ requestUpdate(): void }} element */
  constructor(element) {
    this.#element = element;
  }

  /**
   * @param {unknown[]} about asked anew when one of these has changed
   * @param {() => Promise<T>} ask
   * @returns {T | undefined} the last answer, be it an older one; undefined before the first
   */
  of(about, ask) {
    if (about.length !== this.#about.length || about.some((part, place) => part !== this.#about[place])) {
      this.#about = about;
      ask().then((answer) => {
        if (about !== this.#about) return;
        this.#known = answer;
        this.#element.requestUpdate();
      }, (fault) => console.error("provender: the engine could not say:", fault));
    }
    return this.#known;
  }
}
