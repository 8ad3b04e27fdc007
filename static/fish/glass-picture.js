import { html, svg } from "lit";
import { Element } from "../ui/element.js";
import { t } from "../text/index.js";

/** @typedef {{ x: number, y: number }} Point as parts of the picture's width and height */

/** So near in pixels of the page counts as meant for an end that is there. */
const near = 28;
const step = 0.004;

/**
 * A picture on which the ends of two things are marked: first the object, then the fish. Each by one pull or two taps; each
 * end can be pulled again, or moved by the arrow keys.
 * @fires glass-picture-read - how long object and fish are in pixels of the page; 0: not marked yet
 */
export class GlassPicture extends Element {
  static properties = { picture: { attribute: false } };

  #address = "";
  /** @type {Point[]} the ends of the object, then those of the fish */
  #ends = [];
  /** The end under the finger; null: none, "next": the one that a pull is about to set. @type {number | "next" | null} */
  #held = null;

  constructor() {
    super();
    /** @type {Blob | null} */
    this.picture = null;
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    URL.revokeObjectURL(this.#address);
  }

  /** @param {Map<string, unknown>} changes */
  willUpdate(changes) {
    if (!changes.has("picture")) return;
    URL.revokeObjectURL(this.#address);
    this.#address = this.picture ? URL.createObjectURL(this.picture) : "";
    this.#ends = [];
  }

  render() {
    return html`<div class="glass" @pointerdown=${this.#down} @pointermove=${this.#move} @pointerup=${this.#up} @pointercancel=${this.#up}>
        <img src=${this.#address} alt=${t("glass.picture")} draggable="false">
        <svg aria-hidden="true">${[0, 2].map((from) => this.#line(from))}</svg>
        ${this.#ends.map((_, place) => html`<button type="button" class="end" aria-label=${t(`glass.end.${place}`)}
          @keydown=${(/** @type {KeyboardEvent} */ event) => this.#nudge(event, place)}></button>`)}
      </div>
      <button type="button" class="quiet" @click=${() => this.#mark([])}>${t("glass.again")}</button>`;
  }

  updated() {
    this.querySelectorAll(".end").forEach((end, place) => {
      const { style } = /** @type {HTMLElement} */ (end);
      style.left = `${this.#ends[place].x * 100}%`;
      style.top = `${this.#ends[place].y * 100}%`;
    });
  }

  /** @param {number} from */
  #line(from) {
    const [a, b] = this.#ends.slice(from, from + 2);
    if (!b) return "";
    const at = (/** @type {number} */ part) => `${part * 100}%`;
    return svg`<line class="under" x1=${at(a.x)} y1=${at(a.y)} x2=${at(b.x)} y2=${at(b.y)}/>
      <line class=${from ? "fish" : "object"} x1=${at(a.x)} y1=${at(a.y)} x2=${at(b.x)} y2=${at(b.y)}/>`;
  }

  /** @param {PointerEvent} event */
  #down(event) {
    const at = this.#at(event);
    const place = this.#ends.findIndex((end) => this.#apart(end, at) < near);
    /** @type {HTMLElement} */ (event.currentTarget).setPointerCapture(event.pointerId);
    if (place >= 0) this.#held = place;
    else if (this.#ends.length < 4) {
      this.#held = this.#ends.length % 2 ? this.#ends.length : "next";
      this.#mark([...this.#ends, at]);
    }
  }

  /** @param {PointerEvent} event */
  #move(event) {
    const at = this.#at(event);
    if (this.#held === null) return;
    if (this.#held === "next") {
      if (this.#apart(this.#ends[this.#ends.length - 1], at) < near) return;
      this.#held = this.#ends.length;
      this.#mark([...this.#ends, at]);
    } else this.#mark(this.#ends.map((end, place) => (place === this.#held ? at : end)));
  }

  #up() {
    this.#held = null;
  }

  /** @param {KeyboardEvent} event @param {number} place */
  #nudge(event, place) {
    const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
    if (!way) return;
    event.preventDefault();
    this.#mark(this.#ends.map((end, one) => (one === place ? { x: end.x + way[0] * step, y: end.y + way[1] * step } : end)));
  }

  /** @param {Point[]} ends */
  #mark(ends) {
    this.#ends = ends;
    const long = (/** @type {number} */ from) => (ends.length < from + 2 ? 0 : this.#apart(ends[from], ends[from + 1]));
    this.say("glass-picture-read", { object: long(0), fish: long(2) });
    this.requestUpdate();
  }

  /** @param {PointerEvent} event @returns {Point} */
  #at({ clientX, clientY }) {
    const { left, top, width, height } = this.#box();
    return { x: Math.min(1, Math.max(0, (clientX - left) / width)), y: Math.min(1, Math.max(0, (clientY - top) / height)) };
  }

  #box() {
    return /** @type {Element} */ (this.querySelector(".glass")).getBoundingClientRect();
  }

  /** @param {Point} a @param {Point} b in pixels of the page */
  #apart(a, b) {
    const { width, height } = this.#box();
    return Math.hypot((a.x - b.x) * width, (a.y - b.y) * height);
  }
}
