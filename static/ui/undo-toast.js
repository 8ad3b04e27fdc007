import { html } from "lit";
import { Element } from "./element.js";
import { t } from "../text/index.js";

const longEnoughToUndo = 12_000;

/**
 * A short word after a deed, with the way back for twelve seconds. Speaks politely and leaves the focus where it is.
 * @fires undo-toast-undo - with what was handed to `tell`
 */
export class UndoToast extends Element {
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #timer;
  #words = "";
  #warns = false;
  /** @type {unknown} */
  #subject;

  /**
   * @param {string} words
   * @param {unknown} [subject] what Undo would take back; without it there is no button
   */
  tell(words, subject) {
    this.#warns = false;
    this.#words = words;
    this.#subject = subject;
    this.#wait();
    this.requestUpdate();
  }

  /** What went wrong stands at the top, where it is in nobody's way who tries again. @param {string} words */
  warn(words) {
    this.tell(words);
    this.#warns = true;
  }

  render() {
    return html`
      <div role="status" aria-live="polite" ?data-open=${this.#words !== ""} ?data-warns=${this.#warns}
          @focusin=${this.#stay} @pointerenter=${this.#stay} @focusout=${this.#wait} @pointerleave=${this.#wait}>
        ${this.#words ? html`<span>${this.#words}</span>` : ""}
        ${this.#words && this.#subject !== undefined
          ? html`<button type="button" class="undo" @click=${this.#undo}>${t("undo")}</button>` : ""}
      </div>`;
  }

  #stay() {
    clearTimeout(this.#timer);
  }

  #wait() {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#close(), longEnoughToUndo);
  }

  #undo() {
    const subject = this.#subject;
    this.#close();
    this.say("undo-toast-undo", subject);
  }

  #close() {
    clearTimeout(this.#timer);
    this.#words = "";
    this.#subject = undefined;
    this.requestUpdate();
  }
}
