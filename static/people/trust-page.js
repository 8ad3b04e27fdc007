import { html } from "lit";
import { getJson } from "../sync/http.js";
import { t } from "../text/index.js";
import { Element } from "../ui/element.js";
/** @import { Trust } from "../types.js" */

const systems = ["android", "ios", "computer"];

/** How a phone learns to trust the server of a house: the authority's certificate, what to compare, and where to tap. */
export class TrustPage extends Element {
  static properties = { trust: { state: true }, trouble: { state: true } };

  constructor() {
    super();
    /** @type {Trust | null} */
    this.trust = null;
    this.trouble = false;
  }

  async connectedCallback() {
    super.connectedCallback();
    try {
      this.trust = await getJson("/api/v1/trust");
    } catch {
      this.trouble = true;
    }
  }

  render() {
    const { trust } = this;
    return html`<section class="page card stack">
      <hgroup><p>${t("app.name")}</p><h1>${t("trust.heading")}</h1></hgroup>
      <p>${t(isSecureContext ? "trust.safe" : "trust.insecure")}</p>
      <p role="alert">${this.trouble ? t("people.signIn.offline") : ""}</p>
      ${!trust ? "" : trust.offered ? this.#steps(trust) : html`<p>${t("trust.none")}</p>`}
      <p><a class="firm" href="#/more">${t("trust.back")}</a></p>
    </section>`;
  }

  /** @param {Trust} trust */
  #steps({ names, fingerprint, port }) {
    return html`
      <h2>${t("trust.fetch")}</h2>
      <p>${t("trust.only", { names })}</p>
      <p><a class="deed" href="/api/v1/trust/ca.crt" download="provender-ca.crt">${t("trust.download")}</a></p>
      <p>${t("trust.compare")}</p>
      <p><output class="link">${fingerprint.split(":").map((pair, place) => html`${place ? ":" : ""}${place % 8 ? "" : html`<wbr>`}${pair}`)}</output></p>
      <h2>${t("trust.install")}</h2>
      ${systems.map((system) => html`<details><summary>${t(`trust.${system}`)}</summary>
        <ol>${[1, 2, 3].map((step) => html`<li>${t(`trust.${system}.${step}`)}</li>`)}</ol></details>`)}
      <p><small>${t("trust.menus")}</small></p>
      <h2>${t("trust.open")}</h2>
      <ul>${names.map((name) => html`<li><a class="firm" href=${address(name, port)}>${address(name, port)}</a></li>`)}</ul>`;
  }
}

/** @param {string} name @param {number} port */
const address = (name, port) => `https://${name.includes(":") ? `[${name}]` : name}${port === 443 ? "" : `:${port}`}/`;
