import { Desk } from "./desk.js";
import { Engine, readReference } from "./engine/index.js";
import { FeedPage } from "./feeding/feed-page.js";
import { FeedingList } from "./feeding/feeding-list.js";
import { FeedingRow } from "./feeding/feeding-row.js";
import { FeedingTray } from "./feeding/feeding-tray.js";
import { DropScale } from "./feeder/drop-scale.js";
import { FeederCard } from "./feeder/feeder-card.js";
import { FeederPage } from "./feeder/feeder-page.js";
import { FoodTiles } from "./feeding/food-tiles.js";
import { MeasureSteps } from "./feeding/measure-steps.js";
import { FishDetail } from "./fish/fish-detail.js";
import { FishPage } from "./fish/fish-page.js";
import { FishRow } from "./fish/fish-row.js";
import { SameFeeding } from "./feeding/same-feeding.js";
import { FirstStart } from "./people/first-start.js";
import { HouseholdPeople } from "./people/household-people.js";
import { HouseholdTools } from "./people/household-tools.js";
import { JoinPage } from "./people/join-page.js";
import { MemberCard } from "./people/member-card.js";
import { OwnData } from "./people/own-data.js";
import { OwnPasskeys } from "./people/own-passkeys.js";
import { OwnPhones } from "./people/own-phones.js";
import { PeoplePage } from "./people/people-page.js";
import { QrCode } from "./people/qr-code.js";
import { ResetPage } from "./people/reset-page.js";
import { PlainAddress } from "./people/plain-address.js";
import { SignIn } from "./people/sign-in.js";
import { TankList } from "./people/tank-list.js";
import { RoundPage } from "./round/round-page.js";
import { RoundRow } from "./round/round-row.js";
import { VisitPlan } from "./round/visit-plan.js";
import { TrustPage } from "./people/trust-page.js";
import { FishAdder } from "./setup/fish-adder.js";
import { RecordForm } from "./setup/record-form.js";
import { HistoryPage } from "./records/history-page.js";
import { RecordsPage } from "./records/records-page.js";
import { SetupPage } from "./setup/setup-page.js";
import { SourcesPage } from "./sources/sources-page.js";
import { PhoneStore } from "./store/phone-store.js";
import { Sync } from "./sync/sync.js";
import { loadText, t } from "./text/index.js";
import { language } from "./text/language.js";
import { DayChart } from "./today/day-chart.js";
import { FindingCard } from "./today/finding-card.js";
import { RationPanel } from "./today/ration-panel.js";
import { TodayPage } from "./today/today-page.js";
import { ConflictList } from "./ui/conflict-list.js";
import { Element } from "./ui/element.js";
import { MorePage } from "./ui/more-page.js";
import { NavBar } from "./ui/nav-bar.js";
import { PageHead } from "./ui/page-head.js";
import { RefusedList } from "./ui/refused-list.js";
import { SyncMark } from "./ui/sync-mark.js";
import { showTheme } from "./ui/theme.js";
import { TideLine } from "./ui/tide-line.js";
import { UndoToast } from "./ui/undo-toast.js";
import { WhyDialog } from "./ui/why-dialog.js";
import { watchForUpdates } from "./update.js";
import { LevelChart } from "./water/level-chart.js";
import { WeekChart } from "./week/week-chart.js";
import { WeekPage } from "./week/week-page.js";
import { WaterPage } from "./water/water-page.js";
import { WhatIf } from "./water/what-if.js";

const elements = {
  "conflict-list": ConflictList,
  "day-chart": DayChart,
  "drop-scale": DropScale,
  "feed-page": FeedPage,
  "feeder-card": FeederCard,
  "feeder-page": FeederPage,
  "feeding-list": FeedingList,
  "feeding-row": FeedingRow,
  "feeding-tray": FeedingTray,
  "finding-card": FindingCard,
  "first-start": FirstStart,
  "fish-adder": FishAdder,
  "fish-detail": FishDetail,
  "fish-page": FishPage,
  "fish-row": FishRow,
  "food-tiles": FoodTiles,
  "household-people": HouseholdPeople,
  "history-page": HistoryPage,
  "household-tools": HouseholdTools,
  "join-page": JoinPage,
  "level-chart": LevelChart,
  "member-card": MemberCard,
  "measure-steps": MeasureSteps,
  "more-page": MorePage,
  "nav-bar": NavBar,
  "own-data": OwnData,
  "own-passkeys": OwnPasskeys,
  "own-phones": OwnPhones,
  "page-head": PageHead,
  "people-page": PeoplePage,
  "qr-code": QrCode,
  "plain-address": PlainAddress,
  "ration-panel": RationPanel,
  "record-form": RecordForm,
  "records-page": RecordsPage,
  "refused-list": RefusedList,
  "reset-page": ResetPage,
  "round-page": RoundPage,
  "round-row": RoundRow,
  "same-feeding": SameFeeding,
  "setup-page": SetupPage,
  "sign-in": SignIn,
  "sources-page": SourcesPage,
  "sync-mark": SyncMark,
  "tank-list": TankList,
  "tide-line": TideLine,
  "today-page": TodayPage,
  "trust-page": TrustPage,
  "undo-toast": UndoToast,
  "visit-plan": VisitPlan,
  "water-page": WaterPage,
  "week-chart": WeekChart,
  "week-page": WeekPage,
  "what-if": WhatIf,
  "why-dialog": WhyDialog,
};

/** @type {Record<string, string>} */
const pages = {
  feed: "feed-page", today: "today-page", fish: "fish-page", more: "more-page", tanks: "tank-list", setup: "setup-page", sources: "sources-page", "sign-in": "sign-in",
  join: "join-page", week: "week-page", water: "water-page", feeders: "feeder-page", records: "records-page", history: "history-page", "first-start": "first-start",
  people: "people-page", reset: "reset-page", trust: "trust-page", round: "round-page",
};
const openToAll = ["sign-in", "join", "first-start", "reset", "trust"];
const needNoTank = ["tanks", "people", "round"];

await start().catch(tellNotStarted);

/** Reads the phone, shows what it holds, and only then turns to the network. */
async function start() {
  showTheme();
  const store = new PhoneStore();
  const sync = new Sync(store);
  const desk = new Desk(store, sync, new Engine());
  const reading = Promise.all([loadText(language()), desk.start(readReference())]);
  for (const [tag, element] of Object.entries(elements)) customElements.define(tag, element);
  await reading;
  addEventListener("hashchange", () => show(desk));
  desk.addEventListener("changed", () => show(desk));
  addEventListener("more-page-language", () => sayAnew(desk));
  show(desk);
  await sync.start();
  navigator.storage?.persist?.();
  if (localStorage.getItem("provender.awake") === "on") import("./ui/awake.js").then(({ keepAwake }) => keepAwake());
  // Without a service worker only opening with no network is missing.
  watchForUpdates((takeOver) => desk.updateWaits(takeOver)).catch((fault) => console.warn("provender: not kept for offline:", fault));
}

/** @param {unknown} fault @returns {never} */
function tellNotStarted(fault) {
  const words = /** @type {HTMLTemplateElement} */ (document.getElementById("not-started"));
  document.getElementById("main")?.replaceChildren(...words.content.querySelectorAll(`[lang=${language()}]`));
  throw fault;
}

/** Puts the page that the address names on screen; who is not signed in, or has no tank open, is asked first. @param {Desk} desk */
function show(desk) {
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
  const moved = main.firstElementChild !== null;
  main.replaceChildren(Object.assign(document.createElement(tag), { desk }));
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
function sayAnew(desk) {
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
