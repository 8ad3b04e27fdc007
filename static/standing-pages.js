/** @import { Desk } from "./types.js" */
/** @import { Element } from "./ui/element.js" */
import { idle } from "./desk/rhythm.js";
import { hours } from "./text/hours.js";
import { language } from "./text/language.js";
import { units } from "./text/units.js";

/** Pages to look at stand as they were left when somebody comes back to them; one that only asks begins anew. */
const staying = ["feed-page", "today-page", "week-page", "fish-page"];
/** Those of them that ask the engine for nothing more than it has said already. */
const drawnAhead = ["today-page", "fish-page"];

/** @type {Map<string, HTMLElement>} */
const left = new Map();
/** Of whom and what they speak, and how. */
let leftAs = "";

/** A page, as it was left or a new one. @param {string} tag @param {Desk} desk @returns {HTMLElement} */
export function pageOf(tag, desk) {
  const as = [desk.keeper?.id, desk.tank?.id, language(), units(), hours()].join(" ");
  if (as !== leftAs) left.clear();
  leftAs = as;
  const page = left.get(tag) ?? Object.assign(document.createElement(tag), { desk });
  if (staying.includes(tag)) left.set(tag, page);
  return page;
}

/** Draws pages out of sight, one by one and in idle moments, so that the first look at them is as quick as any later one. @param {Desk} desk */
export async function drawAhead(desk) {
  const aside = document.createElement("div");
  aside.hidden = true;
  document.body.append(aside);
  for (const tag of drawnAhead) {
    await idle();
    const page = desk.today ? pageOf(tag, desk) : null;
    if (!page || page.isConnected) continue;
    aside.replaceChildren(page);
    await /** @type {Element} */ (page).updateComplete;
    // Should somebody have gone there meanwhile, it is theirs.
    aside.replaceChildren();
  }
  aside.remove();
}
