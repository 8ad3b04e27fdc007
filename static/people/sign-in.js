import { html } from "lit";
import { getJson, SaidNo, SignInNeeded } from "../sync/http.js";
import { t } from "../text/index.js";
import { Element } from "../ui/element.js";
import { passkeyProof, PutAway, whyNoPasskeys } from "./passkey.js";

/** The first page: who are you? Later, when the session ran out, the same question with the records left in peace. */
export class SignIn extends Element {
  static properties = { trouble: { state: true }, waiting: { state: true }, first: { state: true } };

  constructor() {
    super();
    /** The key of what went wrong. @type {string | null} */
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
        <p id="sign-in-trouble" role="alert">${this.trouble ? t(this.trouble) : ""}</p>
        <button class="primary" ?disabled=${this.waiting}>${t(this.waiting ? "people.signIn.waiting" : "people.signIn.go")}</button>
        ${whyNoPasskeys() ? "" : html`<p><button type="button" class="firm passkey" ?disabled=${this.waiting}
          @click=${() => this.#passkey()}>${t("passkey.signIn")}</button></p>`}
        <p>${t("people.signIn.once")}</p>
        <plain-address></plain-address>
        <details><summary>${t("people.signIn.forgot")}</summary><p>${t("people.signIn.forgotMeans")}</p></details>
        ${this.first ? html`<p><a class="firm" href="#/first-start">${t("people.firstStart.link")}</a></p>` : ""}
      </form>`;
  }

  /** @param {SubmitEvent} event */
  #submit(event) {
    event.preventDefault();
    const form = new FormData(/** @type {HTMLFormElement} */ (event.target));
    return this.#tried(async () => this.desk?.comeIn("/api/v1/session", { name: String(form.get("name")).trim(), password: String(form.get("password")) }), "people.signIn.wrong");
  }

  #passkey() {
    return this.#tried(async () => this.desk?.comeIn("/api/v1/session/passkey", await passkeyProof()), "passkey.signIn.wrong");
  }

  /** @param {() => Promise<void>} deed @param {string} wrong what to say when the server says no */
  async #tried(deed, wrong) {
    this.waiting = true;
    this.trouble = null;
    try {
      await deed();
      if (location.hash === "#/sign-in") location.hash = "#/feed";
    } catch (fault) {
      const refused = fault instanceof SignInNeeded || fault instanceof SaidNo;
      this.trouble = refused ? wrong : fault instanceof PutAway ? "passkey.signIn.putAway" : "people.signIn.offline";
    } finally {
      this.waiting = false;
    }
  }
}
