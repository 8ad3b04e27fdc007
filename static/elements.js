/** @import { Elements } from "./types.js" */
import { idle } from "./desk/rhythm.js";
import { FeedPage } from "./feeding/feed-page.js";
import { FeedingList } from "./feeding/feeding-list.js";
import { FeedingRow } from "./feeding/feeding-row.js";
import { FeedingTray } from "./feeding/feeding-tray.js";
import { FoodTiles } from "./feeding/food-tiles.js";
import { MeasureSteps } from "./feeding/measure-steps.js";
import { NavBar } from "./ui/nav-bar.js";
import { PageHead } from "./ui/page-head.js";
import { SameFeeding } from "./feeding/same-feeding.js";
import { SyncMark } from "./ui/sync-mark.js";
import { TideLine } from "./ui/tide-line.js";
import { UndoToast } from "./ui/undo-toast.js";

/** The frame and the page at the tank: there from the start. @type {Elements} */
const atOnce = {
  "feed-page": FeedPage,
  "feeding-list": FeedingList,
  "feeding-row": FeedingRow,
  "feeding-tray": FeedingTray,
  "food-tiles": FoodTiles,
  "measure-steps": MeasureSteps,
  "nav-bar": NavBar,
  "page-head": PageHead,
  "same-feeding": SameFeeding,
  "sync-mark": SyncMark,
  "tide-line": TideLine,
  "undo-toast": UndoToast,
};

const records = () => import("./records/elements.js");
const people = () => import("./people/elements.js");

/** What holds a page and its parts, by the page's tag. @type {Record<string, () => Promise<{ elements: Elements }>>} */
const later = {
  "today-page": () => import("./today/elements.js"),
  "week-page": () => import("./week/elements.js"),
  "fish-page": () => import("./fish/elements.js"),
  "water-page": () => import("./water/elements.js"),
  "more-page": () => import("./ui/more-elements.js"),
  "feeder-page": () => import("./feeder/elements.js"),
  "records-page": records,
  "history-page": records,
  "sign-in": people,
  "join-page": people,
  "first-start": people,
  "reset-page": people,
  "mailbox-page": people,
  "trust-page": people,
  "people-page": people,
  "tank-list": people,
  "setup-page": () => import("./setup/elements.js"),
  "round-page": () => import("./round/elements.js"),
  "sources-page": () => import("./sources/elements.js"),
};

/** Makes the elements that are there from the start. */
export function makeFirst() {
  define(atOnce);
}

/** Makes a page and its parts, if it is not yet made. @param {string} page its tag */
export async function make(page) {
  if (!customElements.get(page)) define((await later[page]()).elements);
}

/** Makes one page after the other, each in a moment in which nobody taps, so that nobody waits for any when going there. */
export async function makeRest() {
  for (const page of Object.keys(later)) {
    await idle();
    await make(page);
  }
}

/** @param {Elements} elements */
function define(elements) {
  for (const [tag, element] of Object.entries(elements)) if (!customElements.get(tag)) customElements.define(tag, element);
}
