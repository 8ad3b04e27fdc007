import { html } from "lit";
import { backLink } from "../ui/back-link.js";
import { Asked } from "../ui/asked.js";
import { Element } from "../ui/element.js";
import { foodName, keeperName, label } from "../ui/names.js";
import { clock, dayName, grams, has, moment, plain, t } from "../text/index.js";
/** @import { Desk, Entry } from "../types.js" */

/** One entry and every hand that was on it: who changed what, when, and what of it stands. */
export class HistoryPage extends Element {
  /** @type {Asked<Entry[]>} */
  #history = new Asked(this);

  render() {
    const { desk } = this;
    const today = desk?.today;
    if (!desk || !today) return html`<p role="status">${t("page.opening")}</p>`;
    const id = decodeURIComponent(location.hash.split("/")[2] ?? "");
    const history = this.#history.of([id, today], () => desk.opened.history(id));
    if (!history) return html`<p role="status">${t("page.opening")}</p>`;
    return html`
      <page-head .tank=${today.tank.name} .heading=${t("history.heading")} .when=${clock(today.minute)} .status=${desk.status}></page-head>
      ${backLink("#/feed", t("nav.feed"))}
      ${history.length === 0 ? html`<p>${t("history.none")}</p>` : html`
        <p>${t(isWithdrawn(history) ? "history.withdrawn" : history.length > 1 ? "history.counts" : "history.untouched")}</p>
        <ol>${history.map((entry, place) => this.#hand(desk, entry, history.slice(place + 1)))}</ol>`}`;
  }

  /** @param {Desk} desk @param {Entry} entry @param {Entry[]} later */
  #hand(desk, entry, later) {
    const kind = `status.kind.${entry.kind}`;
    return html`<li class="card stack">
      <h2>${entry.kind === "withdrawal" ? t(entry.body.withdrawn === false ? "history.broughtBack" : "history.takenBack")
        : has(kind) ? t(kind) : label("status.kind", entry.kind)}</h2>
      <p>${keeperName(desk, entry.by)} · <time datetime=${entry.recordedAt}>${moment(entry.recordedAt)}</time>${entry.seq ? "" : html` · ${t("row.onPhone")}`}</p>
      ${entry.kind === "amendment" ? html`<dl>${Object.entries(entry.body.set ?? {}).map(([field, value]) => html`<div>
          <dt>${label("history.field", field)}</dt>
          <dd>${this.#value(desk, field, value)} ${isOvertaken(field, later) ? html`<small>${t("history.overtaken")}</small>` : ""}</dd></div>`)}</dl>`
        : entry.kind === "withdrawal" ? (entry.body.erased ? html`<p>${t("photo.erased")}</p>` : "") : html`
          <p>${t("history.happened", { when: atTank(entry.happenedAt, desk) })}</p>
          ${(entry.body.items ?? []).map((/** @type {{ food: string, grams: number }} */ item) => html`<p>${grams(item.grams)} ${foodName(desk, item.food)}</p>`)}`}
      <details><summary>${t("status.refused.whole")}</summary><pre tabindex="0">${JSON.stringify(entry, null, 2)}</pre></details>
    </li>`;
  }

  /** @param {Desk} desk @param {string} field @param {unknown} value */
  #value(desk, field, value) {
    if (field === "happenedAt") return atTank(String(value), desk);
    if (typeof value === "number") return /grams/i.test(field) ? grams(value) : plain(value);
    if (Array.isArray(value)) return value.map((one) => (one?.food ? `${grams(one.grams)} ${foodName(desk, one.food)}` : String(one?.name ?? one))).join(", ");
    return value === null ? t("history.nothing") : String(value);
  }
}

/** The last word on it. @param {Entry[]} history */
function isWithdrawn(history) {
  return history.filter(({ kind }) => kind === "withdrawal").at(-1)?.body.withdrawn ?? false;
}

/** A later hand set the same field, so this value is history. @param {string} field @param {Entry[]} later */
function isOvertaken(field, later) {
  return later.some(({ kind, body }) => kind === "amendment" && field in (body.set ?? {}));
}

/** By the clock where the tank stands. @param {string} iso local time with its offset @param {Desk} desk */
function atTank(iso, { today }) {
  return `${dayName(Date.parse(iso.slice(0, 10)) / 86_400_000, today?.day ?? 0)} ${clock(Number(iso.slice(11, 13)) * 60 + Number(iso.slice(14, 16)))}`;
}
