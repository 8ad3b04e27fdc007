import { html } from "lit";
import { getJson, postJson, SaidNo, SignInNeeded } from "../sync/http.js";
import { t } from "../text/index.js";
import { language } from "../text/language.js";
import { Element } from "../ui/element.js";
import { passkeyProof, PutAway, whyNoPasskeys } from "./passkey.js";

/** The first page: who are you? Later, when the session ran out, the same question with the records left in peace. */
export class SignIn extends Element {
  static properties = { trouble: { state: true }, waiting: { state: true }, first: { state: true }, letters: { state: true }, told: { state: true } };

  constructor() {
    super();
    /** The key of what went wrong. @type {string | null} */
    this.trouble = null;
    this.waiting = false;
    /** Whether this server still waits for its first steward. */
    this.first = false;
    /** Whether this server sends letters, as far as it was asked. */
    this.letters = false;
    /** What came of asking for one. */
    this.told = "";
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
        <details @toggle=${this.#ask}><summary>${t("people.signIn.forgot")}</summary><div class="stack">
          <p>${t("people.signIn.forgotMeans")}</p>
          ${this.letters ? html`<p>${t("people.signIn.letterMeans")}</p>
            <p><button type="button" class="firm letter" ?disabled=${this.waiting} @click=${this.#letter}>${t("people.signIn.letter")}</button></p>
            <p role="status">${this.told}</p>` : ""}</div></details>
        ${this.first ? html`<p><a class="firm" href="#/first-start">${t("people.firstStart.link")}</a></p>` : ""}
      </form>`;
  }

  async #ask() {
    this.letters ||= await getJson("/api/v1/mailbox").then(({ sends }) => sends, () => false);
  }

  async #letter() {
    const box = /** @type {HTMLInputElement} */ (this.querySelector("input[name=name]"));
    const name = box.value.trim();
    this.told = name ? "" : t("people.signIn.letterFor");
    if (!name) return box.focus();
    this.waiting = true;
    this.told = await postJson("/api/v1/mailbox/reset", { name, language: language() })
      .then(() => t("people.signIn.letterSent", { name }), () => t("people.signIn.offline"));
    this.waiting = false;
  }

  /** @param {SubmitEvent} event */
  #submit(event) {
    event.preventDefault();
    const form = new FormData(/** @type {HTMLFormElement} */ (event.target));
    return this.#tried(async () => this.desk?.door.comeIn("/api/v1/session", { name: String(form.get("name")).trim(), password: String(form.get("password")) }), "people.signIn.wrong");
  }

  #passkey() {
    return this.#tried(async () => this.desk?.door.comeIn("/api/v1/session/passkey", await passkeyProof()), "passkey.signIn.wrong");
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
