import { Desk } from "./desk/desk.js";
import { idle, settled } from "./desk/rhythm.js";
import { Engine, readReference } from "./engine/index.js";
import { PhoneStore } from "./store/phone-store.js";
import { Sync } from "./sync/sync.js";
import { clock, loadText } from "./text/index.js";
import { language } from "./text/language.js";
import { showTheme } from "./ui/theme.js";
import { turn } from "./ui/turns.js";
import { watchForUpdates } from "./update.js";

await start().catch(tellNotStarted);

/** Reads the phone, shows what it holds, and only then turns to the network. */
async function start() {
  showTheme();
  const store = new PhoneStore();
  const sync = new Sync(store);
  const desk = new Desk(store, sync, new Engine());
  const [, , { makeRest, sayAnew, show }] = await Promise.all([loadText(language()), desk.start(readReference()), pagesMeanwhile()]);
  await turn();
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

/** While the disk is busy, nobody waits for what is slow to begin: the pages' own code, and the first time or number that a browser tells. */
async function pagesMeanwhile() {
  await turn();
  const [{ makeFirst, makeRest }, { sayAnew, show }] = await Promise.all([import("./elements.js"), import("./frame.js")]);
  makeFirst();
  await turn();
  clock(0);
  return { makeRest, sayAnew, show };
}

/** @param {unknown} fault @returns {never} */
function tellNotStarted(fault) {
  const words = /** @type {HTMLTemplateElement} */ (document.getElementById("not-started"));
  document.getElementById("main")?.replaceChildren(...words.content.querySelectorAll(`[lang=${language()}]`));
  throw fault;
}
