/** Runs beside the page, so that reckoning never holds up a tap. Takes `{id, ask, args}`, gives `{id, answer}` or `{id, fault}`. */
import { lookBackDays, open } from "/engine/engine.js";
import { LookBack } from "../store/look-back.js";
import { getJson } from "../sync/http.js";
import { Reckoner } from "./reckoner.js";

const opening = getJson("/shared/reference.json").then((tables) => new Reckoner(open(tables), lookBackDays(), new LookBack()));
/** @type {Promise<void>} */
let before = Promise.resolve();

addEventListener("message", ({ data }) => {
  before = before.then(() => answer(data));
});

/** @param {{ id: number, ask: string, args: unknown[] }} question */
async function answer({ id, ask, args }) {
  try {
    const reckoner = /** @type {any} */ (await opening);
    postMessage({ id, answer: await reckoner[ask](...args) });
  } catch (fault) {
    postMessage({ id, fault: String(fault instanceof Error ? fault.stack ?? fault.message : fault) });
  }
}
