import { html } from "lit";
import { Element } from "./element.js";
import { icon } from "./icons.js";
import { inTurn } from "./turns.js";
import { t } from "../text/index.js";

const places = ["feed", "today", "week", "fish", "water", "more"];
const underMore = ["tanks", "setup", "sources", "feeders", "records", "people", "round", "trust"];

/** The six destinations: under the thumb on a phone, down the side where there is room. */
export class NavBar extends Element {
  static properties = { here: {}, findings: { type: Number }, news: { type: Boolean } };

  constructor() {
    super();
    this.here = "feed";
    this.findings = 0;
    this.news = false;
  }

  render() {
    return inTurn(() => this.#places());
  }

  #places() {
    return html`
      <nav aria-label=${t("nav.label")}>
        <span class="mark" aria-hidden="true">${icon("today")}${t("app.name")}</span>
        ${places.map((place) => html`
          <a href="#/${place}" aria-current=${this.#isHere(place)}>
            ${icon(place)}<span>${t(`nav.${place}`)}</span>
            ${place === "today" && this.findings ? html`<span class="count">
              <span aria-hidden="true">${this.findings}</span>
              <span class="unseen">${t("nav.findings", { count: this.findings })}</span></span>` : ""}
            ${place === "more" && this.news ? html`<span class="count">${t("nav.news")}</span>` : ""}
          </a>`)}
      </nav>`;
  }

  /** What is reached from More belongs to it, without being it. @param {string} place */
  #isHere(place) {
    return place === this.here ? "page" : place === "more" && underMore.includes(this.here) ? "true" : "false";
  }
}
