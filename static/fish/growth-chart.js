import { html } from "lit";
import { Plotted } from "../ui/plotted.js";
import { dayName, grams, range, t } from "../text/index.js";
/** @import { Look } from "../ui/plotted.js" */
/** @import { Mass } from "./story.js" */

/** The mass of one fish over time as it was measured: points, the reach of their error, and a table. */
export class GrowthChart extends Plotted {
  static properties = { masses: { attribute: false }, day: { type: Number } };

  constructor() {
    super();
    /** @type {Mass[]} */
    this.masses = [];
    this.day = 0;
  }

  /** @param {Map<string, unknown>} changes */
  updated(changes) {
    if (changes.has("masses")) this.draw();
  }

  render() {
    return html`
      ${this.masses.length > 1 ? html`<div class="plot" role="img" aria-label=${t("story.chartLabel")}></div>
        <p class="key"><span><i class="swatch point"></i>${t("story.measured")}</span>
          <span><i class="swatch reach"></i>${t("story.reach")}</span></p>` : ""}
      <details ?open=${this.masses.length < 2}>
        <summary>${t("chart.table")}</summary>
        <table>
          <thead><tr><th scope="col">${t("chart.day")}</th><th scope="col">${t("fish.mass")}</th><th scope="col">${t("chart.span")}</th></tr></thead>
          <tbody>${[...this.masses].reverse().map(({ day, value, low, high, weighed }) => html`<tr><th scope="row">${dayName(day, this.day)}</th>
            <td>${weighed ? grams(value) : `≈ ${grams(value)}`}</td>
            <td>${weighed ? t("story.weighed") : range(low, high, grams)}</td></tr>`)}</tbody>
        </table>
      </details>`;
  }

  columns() {
    // Two measurings of one day stand side by side; the plot wants days that only rise.
    const rows = this.masses.map((mass, place) => ({ ...mass, day: mass.day + place * 1e-6 }));
    return [rows.map(({ day }) => day), rows.map(({ high }) => high), rows.map(({ low }) => low), rows.map(({ value }) => value)];
  }

  /** @param {Look} look */
  settings({ color, axis, hatch }) {
    const edge = { stroke: color("outline"), width: 1, points: { show: false } };
    const apart = (/** @type {any} */ _, /** @type {number} */ from, /** @type {number} */ to) => [from - (to - from || 1) * 0.04, to + (to - from || 1) * 0.04];
    return {
      scales: { x: { time: false, range: apart }, y: { range: (/** @type {any} */ _, /** @type {number} */ __, /** @type {number} */ most) => [0, most * 1.1 || 1] } },
      axes: [
        { ...axis, space: 64, values: (/** @type {any} */ _, /** @type {number[]} */ days) =>
          days.map((day) => (Number.isInteger(day) ? dayName(day, this.day) : "")) },
        { ...axis, size: 60, grid: { stroke: color("hairline"), width: 1 },
          values: (/** @type {any} */ _, /** @type {number[]} */ marks) => marks.map((mark) => (mark ? grams(mark) : "0")) },
      ],
      series: [
        {},
        edge,
        edge,
        { stroke: color("sea"), width: 2, points: { show: true, size: 9, fill: color("ink"), stroke: color("paper") } },
      ],
      bands: [{ series: [1, 2], fill: hatch(color("outline")) }],
    };
  }
}
