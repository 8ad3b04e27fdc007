import { html } from "lit";
import { Element } from "./element.js";
import { icon } from "./icons.js";
import { t } from "../text/index.js";
/** @import { DeskStatus } from "../types.js" */

/** Where the keeper's records are, in words anyone understands; opens to say what that means. */
export class SyncMark extends Element {
  static properties = { status: { attribute: false } };

  constructor() {
    super();
    /** @type {DeskStatus | null} */
    this.status = null;
  }

  render() {
    const { status } = this;
    if (!status) return "";
    const words = status.state === "needsYou" ? t("sync.needsYou")
      : status.state === "sent" ? t("sync.sent") : t("sync.onPhone", { count: status.unsent + status.photos });
    return html`
      <details class=${status.state}>
        <summary>${icon(status.state)}<span role="status">${words}</span></summary>
        <p>${t(`sync.${status.state}.means`)}</p>
        ${status.why ? html`<p>${t(`sync.why.${status.why}`)}</p>` : ""}
        ${status.why === "signIn" ? html`<p><a href="#/sign-in">${t("people.signIn.go")}</a></p>` : ""}
        <p><a href="#/records">${t("records.heading")}</a></p>
        ${status.refused ? html`<p>${t("sync.refused", { count: status.refused })}</p>` : ""}
      </details>`;
  }
}
