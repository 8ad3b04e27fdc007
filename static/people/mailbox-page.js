import { html } from "lit";
import { postJson, SaidNo } from "../sync/http.js";
import { t } from "../text/index.js";
import { Asking } from "./asking.js";

/** Where the link in a letter leads: says that the letter arrived; the code stands in the address. Needs nobody signed in. */
export class MailboxPage extends Asking {
  static properties = { ...Asking.properties, kept: { state: true } };

  constructor() {
    super();
    this.kept = false;
  }

  render() {
    return html`<section class="page card stack">
      <hgroup><p>${t("app.name")}</p><h1>${t("mailbox.heading")}</h1></hgroup>
      <p role="status">${this.told || t("mailbox.confirm.means")}</p>
      ${this.kept ? html`<p><a class="firm" href="#/feed">${t("mailbox.on")}</a></p>`
        : html`<button type="button" class="deed" ?disabled=${this.waiting} @click=${() => this.#confirm()}>${t("mailbox.confirm.go")}</button>`}
    </section>`;
  }

  #confirm() {
    const code = decodeURIComponent(location.hash.split("/")[2] ?? "");
    return this.tried(async () => {
      try {
        await postJson("/api/v1/mailbox/confirmation", { code });
      } catch (fault) {
        if (fault instanceof SaidNo) return t("mailbox.confirm.stale");
        throw fault;
      }
      this.kept = true;
      return t("mailbox.confirm.done");
    });
  }
}
