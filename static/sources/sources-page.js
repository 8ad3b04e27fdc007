import { html } from "lit";
import { backLink } from "../ui/back-link.js";
import { Element } from "../ui/element.js";
import { plain, t } from "../text/index.js";
import { standingOf } from "../ui/standing.js";
/** @import { Constant, Desk, Source } from "../types.js" */

/** For whoever audits the figures: every constant in use and every source, each with how far it may be trusted. */
export class SourcesPage extends Element {
  #wanted = "";

  render() {
    const { desk } = this;
    if (!desk) return "";
    return html`
      <page-head .tank=${desk.tank?.name ?? ""} .heading=${t("sources.heading")} .when=${""} .status=${desk.status}></page-head>
      ${backLink("#/more", t("nav.more"))}
      <p>${t("sources.intro")}</p>
      <label><span class="unseen">${t("sources.find")}</span>
        <input type="search" placeholder=${t("sources.find")} .value=${this.#wanted} @input=${this.#find}></label>
      <div class="columns">
        <section aria-labelledby="constants-heading">
          <h2 id="constants-heading">${t("sources.constants")}</h2>
          <ul class="audited">${this.#found(desk.reference.constants).map((row) => constant(desk, row))}</ul>
        </section>
        <section aria-labelledby="sources-heading">
          <h2 id="sources-heading">${t("sources.sources")}</h2>
          <ul class="audited">${this.#found(desk.reference.sources).map(source)}</ul>
        </section>
      </div>`;
  }

  /**
   * @template {object} R
   * @param {Map<string, R>} rows
   */
  #found(rows) {
    const wanted = this.#wanted.toLowerCase();
    return [...rows.values()].filter((row) => Object.values(row).join(" ").toLowerCase().includes(wanted));
  }

  /** @param {InputEvent} event */
  #find(event) {
    this.#wanted = /** @type {HTMLInputElement} */ (event.target).value;
    this.requestUpdate();
  }
}

/** @param {Desk} desk @param {Constant} row */
function constant({ reference }, row) {
  const unit = row.unit === "1" ? "" : row.unit;
  return html`<li>
    <h3 lang="en">${row.what}</h3>
    <p><output>${plain(row.value)} ${unit}</output>
      ${row.low === undefined ? "" : html`<small>${t("sources.between", { low: row.low, high: row.high })}</small>`}</p>
    ${standing(standingOf(row.source, { status: row.status }))}
    ${row.source.split("|").map((key) => reference.sources.get(key)).filter((known) => known !== undefined)
      .map((known) => html`<p><cite lang="en">${known.citation}</cite></p>`)}
    ${row.note ? html`<p><small lang="en">${row.note}</small></p>` : ""}
  </li>`;
}

/** @param {Source} row */
function source(row) {
  return html`<li>
    <p><cite lang="en">${row.citation}</cite></p>
    ${standing(standingOf(row.key, row))}
    <p><small>${row.read_as ? t("sources.readAs", { as: row.read_as }) : ""} ${row.licence ?? ""}</small></p>
  </li>`;
}

/** @param {string} word */
const standing = (word) => html`<p class="source"><span class="standing ${word}">${t(`standing.${word}`)}</span></p>`;
