/** @import { Desk } from "./types.js" */
import { hours } from "./text/hours.js";
import { language } from "./text/language.js";
import { units } from "./text/units.js";

/** What is gone back to all day stands as it was left, with what lies on the tray. The others are quicker begun anew, since they come part by part. */
const staying = ["feed-page"];

/** @type {Map<string, HTMLElement>} */
const left = new Map();
/** Of whom and what they speak, and how. */
let leftAs = "";

/** A page, as it was left or a new one. @param {string} tag @param {Desk} desk @returns {HTMLElement} */
export function pageOf(tag, desk) {
  const stays = staying.includes(tag);
  if (stays || left.size > 0) clearWhatIsAnothers(desk);
  const page = left.get(tag) ?? Object.assign(document.createElement(tag), { desk });
  if (stays) left.set(tag, page);
  return page;
}

/** @param {Desk} desk */
function clearWhatIsAnothers(desk) {
  const as = [desk.keeper?.id, desk.tank?.id, language(), units(), hours()].join(" ");
  if (as !== leftAs) left.clear();
  leftAs = as;
}
