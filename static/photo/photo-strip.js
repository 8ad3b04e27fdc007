import { html } from "lit";
import { repeat } from "lit-html/directives/repeat.js";
import { Element } from "../ui/element.js";
import { icon } from "../ui/icons.js";
import { t } from "../text/index.js";
/** @import { Shot } from "../types.js" */

/**
 * Photos side by side; a tap shows one large, with where it is and the way to take it away.
 * @fires photo-strip-away - the photo's id
 * @fires photo-strip-erase - the photo's id, for good and after a question
 */
export class PhotoStrip extends Element {
  static properties = { shots: { attribute: false }, names: { attribute: false }, mayChange: { type: Boolean } };

  /** @type {Map<string, string>} addresses of pictures by photo; empty: not on the server yet; "?": could not be fetched */
  #addresses = new Map();
  /** @type {Shot | null} */
  #large = null;
  /** Whether it was asked to erase the large one, and an answer is awaited. */
  #asked = false;

  constructor() {
    super();
    /** @type {Shot[]} */
    this.shots = [];
    /** @type {{ picture(id: string): Promise<Blob | null>, keeper(id: string): string } | null} */
    this.names = null;
    this.mayChange = false;
  }

  connectedCallback() {
    super.connectedCallback();
    this.requestUpdate();
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    for (const address of this.#addresses.values()) if (address.startsWith("blob:")) URL.revokeObjectURL(address);
    this.#addresses.clear();
  }

  render() {
    return html`<ul>${repeat(this.shots, ({ id }) => id, (shot) => html`<li>${this.#shot(shot)}</li>`)}</ul>
      <dialog aria-label=${t("photo.large")} @close=${() => this.#open(null)}>${this.#large ? this.#inLarge(this.#large) : ""}</dialog>`;
  }

  updated() {
    for (const { id, erased } of this.shots) if (!erased && !this.#addresses.has(id)) this.#fetch(id);
  }

  /** @param {Shot} shot */
  #shot(shot) {
    const address = this.#addresses.get(shot.id);
    if (!shot.erased && address?.startsWith("blob:")) {
      return html`<button type="button" aria-label=${t("photo.show", this.#said(shot))} @click=${() => this.#open(shot)}>
        <img src=${address} alt=""></button>`;
    }
    return html`<p class="missing">${icon("photo")} <small>${t(shot.erased ? "photo.erased" : address === undefined ? "photo.opening" : address ? "photo.noAnswer" : "photo.onItsWay")}</small></p>`;
  }

  /** @param {Shot} shot */
  #inLarge(shot) {
    return html`<p class="row apart"><span>${t("photo.by", this.#said(shot))}</span>
        <button type="button" class="quiet" @click=${this.#close}>${t("close")}</button></p>
      <img src=${this.#addresses.get(shot.id) ?? ""} alt=${t("photo.show", this.#said(shot))}>
      ${shot.note ? html`<p>${shot.note}</p>` : ""}
      <p class="row apart"><small>${shot.problem ? t("photo.refused", { problem: shot.problem }) : t(shot.sent ? "row.sent" : "row.onPhone")}</small>
        ${this.mayChange ? html`<button type="button" class="quiet" @click=${() => this.#leave("photo-strip-away", shot)}>${t("photo.away")}</button>` : ""}</p>
      ${this.mayChange && shot.mayErase ? this.#erasing(shot) : ""}`;
  }

  /** @param {Shot} shot */
  #erasing(shot) {
    return this.#asked ? html`<p role="alert">${t("photo.erase.sure")}</p>
      <p class="row"><button type="button" class="firm" @click=${() => this.#leave("photo-strip-erase", shot)}>${t("photo.erase.yes")}</button>
        <button type="button" class="firm" @click=${() => this.#ask(false)}>${t("photo.erase.no")}</button></p>`
      : html`<p><button type="button" class="quiet" @click=${() => this.#ask(true)}>${t("photo.erase")}</button></p>`;
  }

  /** @param {boolean} asked */
  #ask(asked) {
    this.#asked = asked;
    this.requestUpdate();
  }

  /** @param {Shot} shot */
  #said({ by, happenedAt }) {
    return { by: this.names?.keeper(by) ?? "", at: happenedAt.slice(0, 16).replace("T", " ") };
  }

  /** @param {string} id */
  async #fetch(id) {
    this.#addresses.set(id, "?");
    const picture = await this.names?.picture(id).catch(() => undefined);
    if (!this.isConnected) return;
    this.#addresses.set(id, picture ? URL.createObjectURL(picture) : picture === null ? "" : "?");
    this.requestUpdate();
  }

  /** @param {Shot | null} shot */
  async #open(shot) {
    this.#large = shot;
    this.#ask(false);
    await this.updateComplete;
    if (shot) this.querySelector("dialog")?.showModal();
  }

  #close() {
    this.querySelector("dialog")?.close();
  }

  /** @param {string} event @param {Shot} shot */
  #leave(event, shot) {
    this.#close();
    this.say(event, shot.id);
  }
}
