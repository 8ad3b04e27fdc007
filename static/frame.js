/** @import { Desk } from "./types.js" */
/** @import { NavBar } from "./ui/nav-bar.js" */
import { make } from "./elements.js";
import { pageOf } from "./standing-pages.js";
import { t } from "./text/index.js";
import { Element } from "./ui/element.js";

/** @type {Record<string, string>} */
const pages = {
  feed: "feed-page", today: "today-page", fish: "fish-page", more: "more-page", tanks: "tank-list", setup: "setup-page", sources: "sources-page", "sign-in": "sign-in",
  join: "join-page", week: "week-page", water: "water-page", feeders: "feeder-page", records: "records-page", history: "history-page", "first-start": "first-start",
  people: "people-page", reset: "reset-page", mailbox: "mailbox-page", trust: "trust-page", round: "round-page",
};
const openToAll = ["sign-in", "join", "first-start", "reset", "mailbox", "trust"];
const needNoTank = ["tanks", "people", "round"];

/** Puts the page that the address names on screen; who is not signed in, or has no tank open, is asked first. @param {Desk} desk */
export function show(desk) {
  const named = location.hash.slice(2).split("/")[0];
  const place = named in pages ? named : "feed";
  const asksFirst = openToAll.includes(place) ? null : !desk.keeper ? "sign-in" : desk.tank || needNoTank.includes(place) ? null : "tank-list";
  mount(asksFirst ?? pages[place], desk);
  showNav(desk.keeper && desk.tank ? place : null, desk);
  showTrouble(desk.trouble ? t("status.notReckoned") : desk.fetching ? t("status.fetching", desk.fetching) : "");
  const waits = desk.cleared ? t("status.cleared") : desk.records.waitsTooLong ? t("status.waitsLong", { count: desk.status.unsent }) : "";
  showWaiting(asksFirst || place === "records" ? "" : waits);
}

/** Above every page, because no figure on it is to be trusted then. @param {string} words */
function showTrouble(words) {
  const banner = /** @type {HTMLElement} */ (document.getElementById("trouble"));
  if (banner.textContent !== words) banner.textContent = words;
}

/** What a person should see to leads to where that can be done. @param {string} words */
function showWaiting(words) {
  const line = /** @type {HTMLAnchorElement} */ (document.getElementById("waiting"));
  if (line.textContent !== words) line.textContent = words;
  line.hidden = words === "";
}

/** @param {string} tag @param {Desk} desk */
function mount(tag, desk) {
  const main = /** @type {HTMLElement} */ (document.getElementById("main"));
  if (main.firstElementChild?.localName === tag) return;
  if (!customElements.get(tag)) return void make(tag).then(() => show(desk));
  const moved = main.firstElementChild !== null;
  /** @type {HTMLDialogElement | null} */ (main.querySelector("dialog[open]"))?.close();
  main.replaceChildren(pageOf(tag, desk));
  showTitle(tag);
  scrollTo(0, 0);
  // Whoever hears the page instead of seeing it is taken to its beginning.
  if (moved) main.focus({ preventScroll: true });
}

/** @param {string} tag */
function showTitle(tag) {
  document.title = `${t(`title.${tag}`)} · ${t("app.name")}`;
}

/** In another language, with everything left where it is, so that the keeper's place is too. @param {Desk} desk */
export function sayAnew(desk) {
  for (const element of document.querySelectorAll("*")) if (element instanceof Element) element.requestUpdate();
  showTitle(document.getElementById("main")?.firstElementChild?.localName ?? "more-page");
  show(desk);
}

/** @param {string | null} here @param {Desk} desk */
function showNav(here, desk) {
  let nav = /** @type {NavBar | null} */ (document.querySelector("nav-bar"));
  if (!here) return nav?.remove();
  if (!nav) {
    nav = /** @type {NavBar} */ (document.createElement("nav-bar"));
    document.body.append(nav);
  }
  nav.here = here;
  nav.findings = desk.today?.findings.length ?? 0;
  nav.news = desk.updateReady;
}
