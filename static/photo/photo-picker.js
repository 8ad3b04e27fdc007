import { html } from "lit";
import { Element } from "../ui/element.js";
import { icon } from "../ui/icons.js";
import { t } from "../text/index.js";
import { develop, NotAPicture } from "./develop.js";

/**
 * Takes or chooses one picture, and shows what will be kept of it.
 * @fires photo-picker-choose - a JPEG, or null when it is left out
 */
export class PhotoPicker extends Element {
  static properties = { picture: { attribute: false } };

  #busy = false;
  #fault = "";
  #address = "";
  /** @type {Blob | null} */
  #shown = null;

  constructor() {
    super();
    /** @type {Blob | null} */
    this.picture = null;
  }

  connectedCallback() {
    super.connectedCallback();
    this.requestUpdate();
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    this.#show(null);
  }

  render() {
    this.#show(this.picture);
    return html`
      ${this.picture ? html`<img src=${this.#address} alt=${t("photo.chosen")}>
        <button type="button" class="quiet" @click=${() => this.say("photo-picker-choose", null)}>${t("photo.leaveOut")}</button>`
      : html`<label class="firm">${icon("photo")} ${t(this.#busy ? "photo.developing" : "photo.add")}
        <input class="unseen" type="file" accept="image/*" ?disabled=${this.#busy} @change=${this.#chosen}></label>`}
      <p role="status">${this.#fault}</p>`;
  }

  /** @param {Event} event */
  async #chosen(event) {
    const input = /** @type {HTMLInputElement} */ (event.target);
    const file = input.files?.[0];
    if (!file) return;
    this.#busy = true;
    this.#fault = "";
    this.requestUpdate();
    try {
      this.say("photo-picker-choose", await develop(file));
    } catch (fault) {
      if (!(fault instanceof NotAPicture)) throw fault;
      this.#fault = t("photo.unreadable");
    } finally {
      input.value = "";
      this.#busy = false;
      this.requestUpdate();
    }
  }

  /** @param {Blob | null} picture */
  #show(picture) {
    if (picture === this.#shown) return;
    if (this.#address) URL.revokeObjectURL(this.#address);
    this.#shown = picture;
    this.#address = picture ? URL.createObjectURL(picture) : "";
  }
}
