import { html } from "lit";
import { t } from "../text/index.js";
import { Element } from "./element.js";

/** @import uPlot from "uplot" */

/** An element with a chart in its `.plot`: drawn anew when its size, its light or its numbers change. */
export class Plotted extends Element {
  /** @type {uPlot | undefined} */
  #plot;
  /** @type {ResizeObserver | undefined} */
  #sizes;
  /** @type {MutationObserver | undefined} */
  #theme;
  #waiting = false;
  #dark = matchMedia("(prefers-color-scheme: dark)");
  #redraw = () => this.draw();
  #unfolded = false;

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

  /** What to draw: columns of numbers, the first of them days; none draws nothing. @returns {(number | null)[][]} */
  columns() {
    return [];
  }

  /** How to draw it. @param {Look} _look @returns {object} uPlot's options, sizes left out */
  settings(_look) {
    return {};
  }

  /** The same numbers for whoever cannot see a drawing: written once somebody wants to read them. @param {() => unknown} table */
  behind(table) {
    return html`<details @toggle=${this.#unfold}><summary>${t("chart.table")}</summary>${this.#unfolded ? table() : ""}</details>`;
  }

  #unfold() {
    this.#unfolded = true;
    this.requestUpdate();
  }

  /** What is written comes first; a chart in the frame after it, however often it was asked for meanwhile. */
  draw() {
    if (this.#waiting) return;
    this.#waiting = true;
    requestAnimationFrame(() => setTimeout(() => {
      this.#waiting = false;
      this.#drawn();
    }));
  }

  async #drawn() {
    // What draws charts is fetched with the first of them.
    const { default: Plot } = await import("uplot");
    const box = /** @type {HTMLElement | null} */ (this.querySelector(".plot"));
    this.#plot?.destroy();
    this.#plot = undefined;
    const columns = this.columns();
    if (!this.isConnected || !box?.clientWidth || !columns.length || !columns[0].length) return;
    const sizes = { width: box.clientWidth, height: box.clientHeight, padding: [8, 8, 0, 0], legend: { show: false }, cursor: { show: false } };
    this.#plot = new Plot({ ...sizes, ...this.settings(lookOf(box, Plot)) }, columns, box);
  }

  #watch() {
    const box = this.querySelector(".plot");
    if (box) this.#sizes?.observe(box);
  }

  /** @param {number} width @param {number} height */
  #fit(width, height) {
    if (!this.#plot) this.draw();
    else if (this.#plot.width !== Math.round(width) || this.#plot.height !== Math.round(height)) this.#plot.setSize({ width: Math.round(width), height: Math.round(height) });
  }
}

/** @typedef {{ color: (role: string) => string, axis: object, bars: (size: number[]) => unknown, hatch: (stroke: string) => unknown }} Look the tokens' colours, as they are now */

/** @param {HTMLElement} box @param {typeof uPlot} Plot @returns {Look} */
function lookOf(box, Plot) {
  const look = getComputedStyle(box);
  const color = (/** @type {string} */ role) => look.getPropertyValue(`--${role}`).trim();
  return {
    color,
    axis: { stroke: color("ink-soft"), font: `${look.fontSize} ${look.fontFamily}`, grid: { show: false }, ticks: { stroke: color("hairline"), size: 5 } },
    bars: (size) => Plot.paths.bars?.({ size }),
    hatch,
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
