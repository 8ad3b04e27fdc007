import { html } from "lit";
import { Element } from "./element.js";
/** @import { DeskStatus } from "../types.js" */

/** The top of every page: which tank, which page, and where the records are. */
export class PageHead extends Element {
  static properties = { tank: {}, heading: {}, when: {}, status: { attribute: false } };

  constructor() {
    super();
    this.tank = "";
    this.heading = "";
    this.when = "";
    /** @type {DeskStatus | null} */
    this.status = null;
  }

  render() {
    return html`
      <hgroup>
        <p>${this.tank}</p>
        <h1>${this.heading} ${this.when ? html`<small>${this.when}</small>` : ""}</h1>
      </hgroup>
      <sync-mark .status=${this.status}></sync-mark>`;
  }
}
