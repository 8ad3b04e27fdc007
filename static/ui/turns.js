import { noChange, nothing } from "lit-html";
import { AsyncDirective, directive } from "lit-html/async-directive.js";

/** What waits for its turn, the next one first. @type {(() => void)[]} */
let waiting = [];
/** What was asked for since the last turn began. @type {(() => void)[]} */
let asked = [];
const turns = new MessageChannel();
turns.port1.onmessage = () => {
  // A part's own parts come before the parts after it.
  /** @type {(() => void)[]} */
  const [next, ...rest] = [...asked, ...waiting];
  asked = [];
  waiting = rest;
  if (next !== undefined) turns.port2.postMessage(null);
  next?.();
};

/** Until what was asked for before is done. @returns {Promise<void>} */
export function turn() {
  return new Promise((come) => {
    if (!asked.length && !waiting.length) turns.port2.postMessage(null);
    asked.push(come);
  });
}

class InTurn extends AsyncDirective {
  /** @type {() => unknown} */
  #draw = () => nothing;
  #state = "new";

  /** @param {() => unknown} draw */
  render(draw) {
    this.#draw = draw;
    if (this.#state === "drawn") return draw();
    const isNew = this.#state === "new";
    if (isNew) this.#ask();
    return isNew ? nothing : noChange;
  }

  reconnected() {
    if (this.#state === "left") this.#ask();
  }

  #ask() {
    this.#state = "asked";
    turn().then(() => {
      this.#state = this.isConnected ? "drawn" : "left";
      if (this.isConnected) this.setValue(this.#draw());
    });
  }
}

/**
 * A part of a page that is first drawn in a turn of its own, after the parts asked for before it, so that no tap waits for all of them.
 * What is drawn at once stands above it, or it would move.
 */
export const inTurn = /** @type {(draw: () => unknown) => unknown} */ (directive(InTurn));
