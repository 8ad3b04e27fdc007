import { html } from "lit";
import { backLink } from "./back-link.js";
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
    this.updateComplete.then(() => /** @type {HTMLElement | null} */ (this.querySelector("h2[tabindex]") ?? document.getElementById("main"))?.focus({ preventScroll: true }));
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
    return backLink(to, words);
  }

  /** @param {Desk} desk */
  toast(desk) {
    return html`<undo-toast @undo-toast-undo=${(/** @type {CustomEvent<string[]>} */ { detail }) => this.takeBack(desk, detail)}></undo-toast>`;
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
      await goTo(this.home().to);
      this.tell(t("setup.saved", { count: ids.length }), ids);
    });
    this.#busy = false;
    this.requestUpdate();
  }
}

/** Until what is there stands on the screen. @param {string} address */
async function goTo(address) {
  if (location.hash !== address) {
    const moved = new Promise((resolve) => addEventListener("hashchange", resolve, { once: true }));
    location.hash = address;
    await moved;
  }
  await /** @type {any} */ (document.getElementById("main")?.firstElementChild)?.updateComplete;
}
