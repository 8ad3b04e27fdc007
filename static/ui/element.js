import { LitElement } from "lit";
/** @import { Desk } from "../types.js" */

/**
 * The ground every element of ours stands on: light DOM, and a fresh drawing whenever its desk says "changed".
 * Only pages are given a desk; parts take properties and fire events.
 */
export class Element extends LitElement {
  /** @type {Desk | undefined} */
  #desk;
  #changed = () => this.requestUpdate();

  createRenderRoot() {
    return this;
  }

  get desk() {
    return this.#desk;
  }

  set desk(desk) {
    this.#desk?.removeEventListener("changed", this.#changed);
    this.#desk = desk;
    if (this.isConnected) desk?.addEventListener("changed", this.#changed);
    this.requestUpdate();
  }

  connectedCallback() {
    super.connectedCallback();
    this.#desk?.addEventListener("changed", this.#changed);
    // A page that comes back has heard nothing meanwhile.
    if (this.#desk) this.requestUpdate();
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    this.#desk?.removeEventListener("changed", this.#changed);
  }

  /**
   * Tells whoever listens further up.
   * @param {string} name
   * @param {unknown} [detail]
   */
  say(name, detail) {
    this.dispatchEvent(new CustomEvent(name, { bubbles: true, detail }));
  }
}
