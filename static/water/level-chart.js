import { html } from "lit";
import { Plotted } from "../ui/plotted.js";
import { dayName, figure, range, t } from "../text/index.js";
/** @import { Ion } from "../types.js" */
/** @import { Look } from "../ui/plotted.js" */

const mgL = (/** @type {number} */ value) => figure(value, "mg/L");

/** One ion over the last quarter and four weeks ahead: the tests as points, what is reckoned as a band, and both as a table. */
export class LevelChart extends Plotted {
  static properties = { ion: { attribute: false }, day: { type: Number } };

  constructor() {
    super();
    /** @type {Ion | null} */
    this.ion = null;
    this.day = 0;
  }

  /** @param {Map<string, unknown>} changes */
  updated(changes) {
    if (changes.has("ion")) this.draw();
  }

  render() {
    const { ion } = this;
    if (!ion) return "";
    const name = t(`water.${ion.ion}`);
    return html`
      <div class="plot" role="img" aria-label=${t("water.chartLabel", { ion: name })}></div>
      <p class="key"><span><i class="swatch point"></i>${t("water.tests")}</span>
        ${ion.series.length ? html`<span><i class="swatch reach"></i>${t("water.reckoned")}</span>` : ""}
        <span><i class="swatch wanted"></i>${t(ion.wished ? "water.wanted" : "water.wantedAssumed", { mgL: mgL(ion.wantedMgL) })}</span></p>
      ${this.behind(() => html`<table>
          <thead><tr><th scope="col">${t("chart.day")}</th><th scope="col">${t("water.test")}</th><th scope="col">${t("water.reckoned")}</th></tr></thead>
          <tbody>${this.#days().map(({ day, test, level }) => html`<tr><th scope="row">${dayName(day, this.day)}</th>
            <td>${test === undefined ? "" : mgL(test)}</td><td>${level ? range(level.low, level.high, mgL) : ""}</td></tr>`)}</tbody>
        </table>`)}`;
  }

  /** Days that say something: those with a test, today, and each week ahead; newest first. */
  #days() {
    const { points = [], series = [] } = this.ion ?? {};
    const tests = new Map(points.map(({ day, mgL: value }) => [day, value]));
    const levels = new Map(series.map((level) => [level.day, level]));
    const days = new Set([...tests.keys(), ...[0, 7, 14, 21, 28].map((ahead) => this.day + ahead).filter((day) => levels.has(day))]);
    return [...days].sort((a, b) => b - a).map((day) => ({ day, test: tests.get(day), level: levels.get(day) }));
  }

  columns() {
    const { points = [], series = [], wantedMgL = 0 } = this.ion ?? {};
    const tests = new Map(points.map(({ day, mgL: value }) => [day, value]));
    const levels = new Map(series.map((level) => [level.day, level]));
    const days = [...new Set([...tests.keys(), ...levels.keys()])].sort((a, b) => a - b);
    const of = (/** @type {"high" | "low" | "value"} */ part) => days.map((day) => levels.get(day)?.[part] ?? null);
    return [days, of("high"), of("low"), of("value"), days.map(() => wantedMgL), days.map((day) => tests.get(day) ?? null)];
  }

  /** @param {Look} look */
  settings({ color, axis, hatch }) {
    const edge = { stroke: color("outline"), width: 1, points: { show: false } };
    return {
      scales: { x: { time: false }, y: { range: (/** @type {any} */ _, /** @type {number} */ __, /** @type {number} */ most) => [0, most * 1.1 || 1] } },
      axes: [
        { ...axis, space: 70, values: (/** @type {any} */ _, /** @type {number[]} */ days) =>
          days.map((day) => (Number.isInteger(day) ? dayName(day, this.day) : "")) },
        { ...axis, size: 52, grid: { stroke: color("hairline"), width: 1 },
          values: (/** @type {any} */ _, /** @type {number[]} */ marks) => marks.map((mark) => figure(mark, "")) },
      ],
      series: [
        {},
        edge,
        edge,
        { stroke: color("sea"), width: 2, points: { show: false } },
        { stroke: color("accent"), width: 2, dash: [6, 4], points: { show: false } },
        { stroke: color("ink"), width: 0, paths: () => null, points: { show: true, size: 9, fill: color("ink"), stroke: color("paper") } },
      ],
      bands: [{ series: [1, 2], fill: hatch(color("outline")) }],
    };
  }
}
