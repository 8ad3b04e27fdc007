import { html } from "lit";
import { icon } from "./icons.js";

/** The way back to where a page belongs. @param {string} to @param {string} words */
export const backLink = (to, words) => html`<p class="back-link"><a href=${to}>${icon("back")} ${words}</a></p>`;
