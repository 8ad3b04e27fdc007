import { html } from "lit";
import { ToldPage } from "./told-page.js";
import { t } from "../text/index.js";
/** @import { Desk } from "../types.js" */
/** @import { SetupForm, Writing } from "../setup/forms.js" */

/** A page with forms of its own, named by the address: what they answer is written as entries, and can be taken back. */
export class FormPage extends ToldPage {
  #busy = false;
  #moved = () => {
    this.requestUpdate();
    scrollTo(0, 0);
    this.updateComplete.then(() => /** @type {HTMLElement | null} */ (this.querySelector("h2"))?.focus());
  };

  connectedCallback() {
    super.connectedCallback();
    addEventListener("hashchange", this.#moved);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    removeEventListener("hashchange", this.#moved);
  }

  /** Where the page's own overview is, and what it is called. @returns {{ to: string, words: string }} */
  home() {
    return { to: "#/more", words: t("nav.more") };
  }

  /** What follows the page's name in the address. */
  address() {
    return location.hash.split("/").slice(2).map(decodeURIComponent);
  }

  back() {
    const { to, words } = this.home();
    return html`<p><a class="quiet" href=${to}>${words}</a></p>`;
  }

  /** @param {Desk} desk */
  toast(desk) {
    return html`<undo-toast @undo-toast-undo=${(/** @type {CustomEvent<string[]>} */ { detail }) => this.#undo(desk, detail)}></undo-toast>`;
  }

  /** @param {Desk} desk @param {SetupForm} form @param {string} place another place is another form */
  form(desk, form, place) {
    return html`${this.back()}
      <div class="card stack">
        <h2 tabindex="-1">${form.heading}</h2>
        ${form.intro ? html`<p>${form.intro}</p>` : ""}
        ${form.caution ? html`<p class="caution">${form.caution}</p>` : ""}
        ${[place].map(() => html`<record-form .fields=${form.fields} .deed=${form.deed ?? ""} .busy=${this.#busy}
          @record-form-done=${(/** @type {CustomEvent} */ { detail }) => this.write(desk, form.write(detail))}></record-form>`)}
        ${form.links?.map(({ to, words }) => html`<p><a class="firm" href=${to}>${words}</a></p>`) ?? ""}
      </div>`;
  }

  /** @param {Desk} desk @param {Writing[]} writings */
  async write(desk, writings) {
    this.#busy = true;
    this.requestUpdate();
    await this.tried(async () => {
      const ids = [];
      for (const { kind, body } of writings) ids.push((await desk.record(kind, body)).id);
      location.hash = this.home().to;
      this.tell(t("setup.saved", { count: ids.length }), ids);
    });
    this.#busy = false;
    this.requestUpdate();
  }

  /** @param {Desk} desk @param {string[]} ids */
  #undo(desk, ids) {
    return this.tried(async () => {
      for (const id of ids) await desk.withdraw(id, true);
      this.tell(t("toast.undone"));
    });
  }
}
