import { Desk } from "./desk/desk.js";
import { idle, settled } from "./desk/rhythm.js";
import { makeFirst, makeRest } from "./elements.js";
import { Engine, readReference } from "./engine/index.js";
import { sayAnew, show } from "./frame.js";
import { PhoneStore } from "./store/phone-store.js";
import { Sync } from "./sync/sync.js";
import { loadText } from "./text/index.js";
import { language } from "./text/language.js";
import { showTheme } from "./ui/theme.js";
import { watchForUpdates } from "./update.js";

await start().catch(tellNotStarted);

/** Reads the phone, shows what it holds, and only then turns to the network. */
async function start() {
  showTheme();
  const store = new PhoneStore();
  const sync = new Sync(store);
  const desk = new Desk(store, sync, new Engine());
  const reading = Promise.all([loadText(language()), desk.start(readReference())]);
  makeFirst();
  await reading;
  addEventListener("hashchange", () => show(desk));
  desk.addEventListener("changed", () => show(desk));
  addEventListener("more-page-language", () => sayAnew(desk));
  show(desk);
  settled().then(makeRest);
  await sync.start(idle());
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
