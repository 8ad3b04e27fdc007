import { html } from "lit";
import { Plotted } from "../ui/plotted.js";
import { dayName, kj, percent, range, t } from "../text/index.js";
/** @import { Look } from "../ui/plotted.js" */

/** @typedef {{ day: number, due: number, given: number, low: number, high: number }} Week */

/** A quarter of weeks, each with what was given against the reach of what was due, and the same as a table. */
export class WeekChart extends Plotted {
  static properties = { weeks: { attribute: false }, day: { type: Number } };

  constructor() {
    super();
    /** @type {Week[]} */
    this.weeks = [];
    this.day = 0;
  }

  /** @param {Map<string, unknown>} changes */
  updated(changes) {
    if (changes.has("weeks")) this.draw();
  }

  render() {
    return html`
      <h2>${t("week.trend")}</h2>
      <div class="plot" role="img" aria-label=${t("week.trendLabel")}></div>
      <p class="key"><span><i class="swatch given"></i>${t("chart.given")}</span><span><i class="swatch reach"></i>${t("chart.due")}</span></p>
      ${this.behind(() => html`<table>
          <thead><tr><th scope="col">${t("week.to")}</th><th scope="col">${t("chart.given")}</th><th scope="col">${t("ration.due")}</th>
            <th scope="col">${t("chart.span")}</th><th scope="col">${t("week.part")}</th></tr></thead>
          <tbody>${[...this.weeks].reverse().map(({ day, due, given, low, high }) => html`<tr><th scope="row">${dayName(day, this.day)}</th>
            <td>${kj(given)}</td><td>${kj(due)}</td><td>${range(low, high, kj)}</td><td>${due > 0 ? percent(given / due) : "–"}</td></tr>`)}</tbody>
        </table>`)}`;
  }

  columns() {
    return [this.weeks.map((_, place) => place), ...["high", "low", "due", "given"].map((column) =>
      this.weeks.map((row) => row[/** @type {keyof Week} */ (column)]))];
  }

  /** @param {Look} look */
  settings({ color, axis, bars, hatch }) {
    const edge = { stroke: color("outline"), width: 1, points: { show: false } };
    return {
      scales: { x: { time: false, range: () => [-0.7, this.weeks.length - 0.3] },
        y: { range: (/** @type {any} */ _, /** @type {number} */ __, /** @type {number} */ most) => [0, most * 1.06 || 1] } },
      axes: [
        { ...axis, space: 60, values: (/** @type {any} */ _, /** @type {number[]} */ places) =>
          places.map((place) => (Number.isInteger(place) && this.weeks[place] ? dayName(this.weeks[place].day, this.day) : "")) },
        { ...axis, size: 72, grid: { stroke: color("hairline"), width: 1 },
          values: (/** @type {any} */ _, /** @type {number[]} */ marks) => marks.map((mark) => (mark ? kj(mark) : "0")) },
      ],
      series: [{}, edge, edge, { stroke: color("accent"), width: 2, dash: [6, 4], points: { show: false } },
        { stroke: color("sea"), fill: color("sea"), width: 0, paths: bars([0.55, 26]), points: { show: false } }],
      bands: [{ series: [1, 2], fill: hatch(color("outline")) }],
    };
  }
}
