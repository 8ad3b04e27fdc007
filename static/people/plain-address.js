import { html } from "lit";
import { t } from "../text/index.js";
import { Element } from "../ui/element.js";

/** Says plainly what is missing where the address is not encrypted, and that logging goes on. */
export class PlainAddress extends Element {
  render() {
    return isSecureContext ? "" : html`<section class="note"><h2>${t("trust.plain")}</h2>
      <p>${t("trust.insecure")}</p><p><a class="firm" href="#/trust">${t("trust.how")}</a></p></section>`;
  }
}
