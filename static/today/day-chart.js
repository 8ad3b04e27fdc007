import { html } from "lit";
import uPlot from "uplot";
import { Element } from "../ui/element.js";
import { dayName, kj, range, t } from "../text/index.js";
/** @import { DayRation } from "../types.js" */

/** Four weeks of given against due, drawn, and the same numbers as a table. */
export class DayChart extends Element {
  static properties = { days: { attribute: false }, day: { type: Number } };

  /** @type {uPlot | undefined} */
  #plot;
  /** @type {ResizeObserver | undefined} */
  #sizes;
  /** @type {MutationObserver | undefined} */
  #theme;
  #dark = matchMedia("(prefers-color-scheme: dark)");
  #redraw = () => this.#draw();

  constructor() {
    super();
    /** @type {DayRation[]} */
    this.days = [];
    this.day = 0;
  }

  connectedCallback() {
    super.connectedCallback();
    this.#sizes = new ResizeObserver(([entry]) => this.#fit(entry.contentRect.width, entry.contentRect.height));
    this.#theme = new MutationObserver(this.#redraw);
    this.#theme.observe(document.documentElement, { attributeFilter: ["data-theme"] });
    this.#dark.addEventListener("change", this.#redraw);
    if (this.hasUpdated) this.#watch();
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    this.#sizes?.disconnect();
    this.#theme?.disconnect();
    this.#dark.removeEventListener("change", this.#redraw);
    this.#plot?.destroy();
    this.#plot = undefined;
  }

  firstUpdated() {
    this.#watch();
  }

  /** @param {Map<string, unknown>} changes */
  updated(changes) {
    if (changes.has("days")) this.#draw();
  }

  render() {
    return html`
      <h2>${t("chart.heading")}</h2>
      <div class="plot" role="img" aria-label=${t("chart.label")}></div>
      <p class="key"><span><i class="swatch given"></i>${t("chart.given")}</span>
        <span><i class="swatch reach"></i>${t("chart.due")}</span></p>
      <details>
        <summary>${t("chart.table")}</summary>
        <table>
          <thead><tr><th scope="col">${t("chart.day")}</th><th scope="col">${t("chart.given")}</th>
            <th scope="col">${t("ration.due")}</th><th scope="col">${t("chart.span")}</th></tr></thead>
          <tbody>${[...this.days].reverse().map((row) => html`<tr>
            <th scope="row">${dayName(row.day, this.day)}</th><td>${kj(row.givenKj)}</td><td>${kj(row.dueKj)}</td>
            <td>${range(row.lowKj, row.highKj, kj)}</td></tr>`)}</tbody>
        </table>
      </details>`;
  }

  #watch() {
    const box = this.querySelector(".plot");
    if (box) this.#sizes?.observe(box);
  }

  /** @param {number} width @param {number} height */
  #fit(width, height) {
    if (this.#plot) this.#plot.setSize({ width, height });
    else this.#draw();
  }

  #draw() {
    const box = /** @type {HTMLElement | null} */ (this.querySelector(".plot"));
    this.#plot?.destroy();
    this.#plot = undefined;
    if (!box?.clientWidth || !this.days.length) return;
    const columns = /** @type {(keyof DayRation)[]} */ (["day", "highKj", "lowKj", "dueKj", "givenKj"]);
    const data = columns.map((column) => this.days.map((row) => row[column]));
    this.#plot = new uPlot(settings(box, this.day), data, box);
  }
}

/**
 * The chart in the tokens' colours: a hatched reach, a dashed due line, solid columns for what was given.
 * @param {HTMLElement} box
 * @param {number} today
 */
function settings(box, today) {
  const look = getComputedStyle(box);
  const color = (/** @type {string} */ role) => look.getPropertyValue(`--${role}`).trim();
  const font = `${look.fontSize} ${look.fontFamily}`;
  const axis = { stroke: color("ink-soft"), font, grid: { show: false }, ticks: { stroke: color("hairline"), size: 5 } };
  const edge = { stroke: color("outline"), width: 1, points: { show: false } };
  return {
    width: box.clientWidth,
    height: box.clientHeight,
    padding: [8, 8, 0, 0],
    legend: { show: false },
    cursor: { show: false },
    scales: { x: { time: false, range: (/** @type {any} */ _, /** @type {number} */ from, /** @type {number} */ to) => [from - 0.7, to + 0.7] },
      y: { range: (/** @type {any} */ _, /** @type {number} */ __, /** @type {number} */ most) => [0, most * 1.06] } },
    axes: [
      { ...axis, space: 70, values: (/** @type {any} */ _, /** @type {number[]} */ days) =>
        days.map((day) => (Number.isInteger(day) ? dayName(day, today) : "")) },
      { ...axis, size: 52, grid: { stroke: color("hairline"), width: 1 },
        values: (/** @type {any} */ _, /** @type {number[]} */ marks) => marks.map((mark) => (mark ? kj(mark) : "0")) },
    ],
    series: [
      {},
      edge,
      edge,
      { stroke: color("accent"), width: 2, dash: [6, 4], points: { show: false } },
      { stroke: color("sea"), fill: color("sea"), width: 0, paths: uPlot.paths.bars?.({ size: [0.55, 18] }), points: { show: false } },
    ],
    bands: [{ series: [1, 2], fill: hatch(color("outline")) }],
  };
}

/** @param {string} stroke */
function hatch(stroke) {
  const size = 7 * devicePixelRatio;
  const tile = new OffscreenCanvas(size, size);
  const pen = /** @type {OffscreenCanvasRenderingContext2D} */ (tile.getContext("2d"));
  pen.strokeStyle = stroke;
  pen.lineWidth = devicePixelRatio;
  for (const shift of [-size, 0, size]) {
    pen.moveTo(shift, size);
    pen.lineTo(shift + size, 0);
  }
  pen.stroke();
  return () => pen.createPattern(tile, "repeat");
}
