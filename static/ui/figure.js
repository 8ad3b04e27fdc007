import { html } from "lit";
import { t } from "../text/index.js";
/** @import { Figure } from "../types.js" */

/**
 * One number as sure as it is: measured stands plain, estimated carries a swung dash, assumed is dotted and says so.
 * @param {Figure} figure
 * @param {(value: number) => string} format
 */
export function figure(figure, format) {
  const word = figure.basis === "assumed" ? html` <small>${t("basis.assumed")}</small>` : "";
  return html`<span class="figure ${figure.basis}">${figure.basis === "measured" ? "" : html`<span
    class="about" aria-label=${t(`basis.${figure.basis}.spoken`)}>≈</span>`}<span class="digits">${format(figure.value)}</span>${word}</span>`;
}

/**
 * The button behind every number.
 * @param {() => void} ask
 * @param {string} about what it explains, for those who hear the page
 */
export function whyButton(ask, about) {
  return html`<button type="button" class="quiet why" @click=${ask} aria-label=${t("why.of", { about })}>${t("why.ask")}</button>`;
}
