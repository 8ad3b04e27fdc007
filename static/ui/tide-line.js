import { html, svg } from "lit";
import { Element } from "./element.js";
import { kj, t } from "../text/index.js";
/** @import { Figure } from "../types.js" */

let drawn = 0;

/**
 * The ration as water against a mark: given is the solid rise, what is honestly due is the hatched reach between
 * low and high, and the due mark carries its number. By hand and by feeder are told apart by pattern.
 */
export class TideLine extends Element {
  static properties = {
    due: { attribute: false },
    given: { attribute: false },
    hand: { type: Number },
    feeder: { type: Number },
  };

  #hatch = `tide-hatch-${++drawn}`;
  #rows = `tide-rows-${drawn}`;

  constructor() {
    super();
    /** @type {Figure | null} */
    this.due = null;
    /** @type {Figure | null} */
    this.given = null;
    this.hand = 0;
    this.feeder = 0;
  }

  render() {
    const { due, given } = this;
    if (!due || !given) return "";
    const scale = scaleFor(Math.max(due.high, given.value));
    const at = (/** @type {number} */ energy) => `${(100 * energy) / scale.end}%`;
    const label = t("tide.label", {
      given: kj(given.value), due: kj(due.value), low: kj(due.low), high: kj(due.high),
    });
    return html`
      <svg class="chart" role="img" aria-label=${label} width="100%" height="5.4em">
        <defs>
          <pattern id=${this.#hatch} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <path class="hatch" d="M0 0V7"/>
          </pattern>
          <pattern id=${this.#rows} width="6" height="5" patternUnits="userSpaceOnUse">
            <path class="rows" d="M0 1.5H6"/>
          </pattern>
        </defs>
        <rect class="reach" x=${at(due.low)} y="1.5em" width=${at(due.high - due.low)} height="2.4em"
          fill=${`url(#${this.#hatch})`}/>
        ${this.#water(at)}
        <line class="bed" x1="0" x2="100%" y1="3.9em" y2="3.9em"/>
        ${scale.marks.map((mark) => svg`
          <line class="tick" x1=${at(mark)} x2=${at(mark)} y1="3.9em" y2="4.2em"/>
          <text class="scale" x=${at(mark)} y="5.2em" text-anchor=${anchor(mark / scale.end)}>${mark}</text>`)}
        <line class="mark" x1=${at(due.value)} x2=${at(due.value)} y1="1.2em" y2="3.9em"/>
        <text class="due" x=${at(due.value)} y="0.9em" text-anchor=${anchor(due.value / scale.end)}>
          ${t("tide.due", { due: kj(due.value) })}
        </text>
      </svg>`;
  }

  /** @param {(energy: number) => string} at */
  #water(at) {
    const total = this.hand + this.feeder;
    if (total <= 0) return "";
    return svg`
      <rect class="hand" x="0" y="1.9em" width=${at(this.hand)} height="2em"/>
      <rect class="feeder" x=${at(this.hand)} y="1.9em" width=${at(this.feeder)} height="2em"
        fill=${`url(#${this.#rows})`}/>
      <svg x=${at(total)} y="1.9em" width="0.5em" height="2em" viewBox="0 0 5 20" preserveAspectRatio="none">
        <path class="front" d="M0 0C4 2 5 5 3.5 8.5S1 14 2 16.5 4 19 5 20H0z"/>
      </svg>`;
  }
}

/**
 * A ruler that ends a little beyond what has to fit, with four to six round marks.
 * @param {number} most
 */
function scaleFor(most) {
  const end = Math.max(most, 1) * 1.06;
  const rough = end / 5;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((n) => n * power).find((n) => n >= rough) ?? 10 * power;
  const marks = [];
  for (let n = 0; n * step <= end; n++) marks.push(Number((n * step).toPrecision(6)));
  return { end, marks };
}

/** @param {number} place 0 to 1 along the line */
function anchor(place) {
  if (place < 0.12) return "start";
  return place > 0.88 ? "end" : "middle";
}
