import { html } from "lit";
import { getJson, SaidNo, SignInNeeded } from "../sync/http.js";
import { t } from "../text/index.js";
import { Element } from "../ui/element.js";

/** The first page: who are you? Later, when the session ran out, the same question with the records left in peace. */
export class SignIn extends Element {
  static properties = { trouble: { state: true }, waiting: { state: true }, first: { state: true } };

  constructor() {
    super();
    /** @type {string | null} */
    this.trouble = null;
    this.waiting = false;
    /** Whether this server still waits for its first steward. */
    this.first = false;
  }

  async connectedCallback() {
    super.connectedCallback();
    this.first = await getJson("/api/v1/first-start").then(({ open }) => open, () => false);
  }

  render() {
    return html`
      <form class="page card stack" @submit=${this.#submit}>
        <hgroup>
          <p>${t("app.name")}</p>
          <h1>${t("people.signIn.heading")}</h1>
        </hgroup>
        <label for="sign-in-name">${t("people.signIn.name")}</label>
        <input id="sign-in-name" name="name" autocomplete="username" autocapitalize="none" spellcheck="false"
          aria-describedby="sign-in-trouble" required>
        <label for="sign-in-password">${t("people.signIn.password")}</label>
        <input id="sign-in-password" name="password" type="password" autocomplete="current-password"
          aria-describedby="sign-in-trouble" required>
        <p id="sign-in-trouble" role="alert">${this.trouble ? t(`people.signIn.${this.trouble}`) : ""}</p>
        <button class="primary" ?disabled=${this.waiting}>${t(this.waiting ? "people.signIn.waiting" : "people.signIn.go")}</button>
        <p>${t("people.signIn.once")}</p>
        <details><summary>${t("people.signIn.forgot")}</summary><p>${t("people.signIn.forgotMeans")}</p></details>
        ${this.first ? html`<p><a class="firm" href="#/first-start">${t("people.firstStart.link")}</a></p>` : ""}
      </form>`;
  }

  /** @param {SubmitEvent} event */
  async #submit(event) {
    event.preventDefault();
    const form = new FormData(/** @type {HTMLFormElement} */ (event.target));
    this.waiting = true;
    this.trouble = null;
    try {
      await this.desk?.signIn(String(form.get("name")).trim(), String(form.get("password")));
      if (location.hash === "#/sign-in") location.hash = "#/feed";
    } catch (fault) {
      this.trouble = fault instanceof SignInNeeded || fault instanceof SaidNo ? "wrong" : "offline";
    } finally {
      this.waiting = false;
    }
  }
}
