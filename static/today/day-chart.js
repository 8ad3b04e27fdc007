import { html } from "lit";
import { Plotted } from "../ui/plotted.js";
import { dayName, kj, range, t } from "../text/index.js";
/** @import { DayRation } from "../types.js" */
/** @import { Look } from "../ui/plotted.js" */

/** Four weeks of given against due, drawn, and the same numbers as a table. */
export class DayChart extends Plotted {
  static properties = { days: { attribute: false }, day: { type: Number } };

  constructor() {
    super();
    /** @type {DayRation[]} */
    this.days = [];
    this.day = 0;
  }

  /** @param {Map<string, unknown>} changes */
  updated(changes) {
    if (changes.has("days")) this.draw();
  }

  render() {
    return html`
      <h2>${t("chart.heading")}</h2>
      <div class="plot" role="img" aria-label=${t("chart.label")}></div>
      <p class="key"><span><i class="swatch given"></i>${t("chart.given")}</span>
        <span><i class="swatch reach"></i>${t("chart.due")}</span></p>
      ${this.behind(() => html`<table>
          <thead><tr><th scope="col">${t("chart.day")}</th><th scope="col">${t("chart.given")}</th>
            <th scope="col">${t("ration.due")}</th><th scope="col">${t("chart.span")}</th></tr></thead>
          <tbody>${[...this.days].reverse().map((row) => html`<tr>
            <th scope="row">${dayName(row.day, this.day)}</th><td>${kj(row.givenKj)}</td><td>${kj(row.dueKj)}</td>
            <td>${range(row.lowKj, row.highKj, kj)}</td></tr>`)}</tbody>
        </table>`)}`;
  }

  columns() {
    const columns = /** @type {(keyof DayRation)[]} */ (["day", "highKj", "lowKj", "dueKj", "givenKj"]);
    return columns.map((column) => this.days.map((row) => row[column]));
  }

  /** A hatched reach, a dashed due line, solid columns for what was given. @param {Look} look */
  settings({ color, axis, bars, hatch }) {
    const edge = { stroke: color("outline"), width: 1, points: { show: false } };
    return {
      scales: { x: { time: false, range: (/** @type {any} */ _, /** @type {number} */ from, /** @type {number} */ to) => [from - 0.7, to + 0.7] },
        y: { range: (/** @type {any} */ _, /** @type {number} */ __, /** @type {number} */ most) => [0, most * 1.06] } },
      axes: [
        { ...axis, space: 70, values: (/** @type {any} */ _, /** @type {number[]} */ days) =>
          days.map((day) => (Number.isInteger(day) ? dayName(day, this.day) : "")) },
        { ...axis, size: 52, grid: { stroke: color("hairline"), width: 1 },
          values: (/** @type {any} */ _, /** @type {number[]} */ marks) => marks.map((mark) => (mark ? kj(mark) : "0")) },
      ],
      series: [
        {},
        edge,
        edge,
        { stroke: color("accent"), width: 2, dash: [6, 4], points: { show: false } },
        { stroke: color("sea"), fill: color("sea"), width: 0, paths: bars([0.55, 18]), points: { show: false } },
      ],
      bands: [{ series: [1, 2], fill: hatch(color("outline")) }],
    };
  }
}
