import { html } from "lit";
import { backLink } from "../ui/back-link.js";
import { repeat } from "lit-html/directives/repeat.js";
import { t } from "../text/index.js";
import { Element } from "../ui/element.js";

/** Who belongs to one's households, and where one is signed in oneself. Needs the network. */
export class PeoplePage extends Element {
  render() {
    const { desk } = this;
    if (!desk) return "";
    return html`
      <page-head .tank=${desk.tank?.name ?? ""} .heading=${t("people.heading")} .status=${desk.status}></page-head>
      ${desk.tank ? backLink("#/more", t("nav.more")) : ""}
      <div class="columns">
        <div class="stack">${repeat(desk.households, ({ id }) => id, (household) => html`
          <household-people .desk=${desk} .household=${household}></household-people>`)}</div>
        <div class="stack">
          <own-phones .desk=${desk}></own-phones>
          <own-mailbox .desk=${desk}></own-mailbox>
          <own-passkeys .desk=${desk}></own-passkeys>
          <own-data .desk=${desk}></own-data>
        </div>
      </div>`;
  }
}
